import { type OtherVersion, valueAt, withVersion } from '@footmark/merge';
import type { Site } from '@footmark/site';
import { X } from 'lucide-react';
import cards from '../cards/cards.module.css';
import { Action } from '../controls/Action';
import { lookAt, stopLooking } from '../session/looking';
import { setOtherVersions, useOthersOf } from '../session/otherVersions';
import { edit, useSiteSession } from '../session/siteSession';
import { compareVersions } from './compareVersions';
import styles from './others.module.css';
import { placeName } from './placeName';

/** What two people changed otherwise, both versions of each side by side, to be chosen. */
export function OthersCard({ onClose }: { readonly onClose: () => void }) {
  const site = useSiteSession((s) => s.site);
  const others = useOthersOf(site?.id ?? '');
  if (site === null) return null;
  return (
    <section className={cards.card} aria-label="Changed by two people">
      <div className={cards.head}>
        <h2>Changed by two people</h2>
        <Action look="quiet" onPress={onClose}>
          <X size={20} aria-hidden /> Close
        </Action>
      </div>
      {others.length === 0 ? <p className={cards.empty}>Nothing waits for a choice.</p> : null}
      {others.map((version) => (
        <BothVersions
          key={JSON.stringify(version)}
          site={site}
          version={version}
          onChosen={() =>
            setOtherVersions(
              site.id,
              others.filter((each) => each !== version),
            )
          }
        />
      ))}
    </section>
  );
}

type Props = { readonly site: Site; readonly version: OtherVersion; readonly onChosen: () => void };

function BothVersions({ site, version, onChosen }: Props) {
  const { place, other } = version;
  const withOther = withVersion(site, place, other);
  const name = placeName(place, site, withOther);
  const rows = compareVersions(place, site, withOther);
  const keep = () => {
    stopLooking();
    onChosen();
  };
  const take = () => {
    stopLooking();
    if (edit(`Take the other version of ${name}`, () => withOther)) onChosen();
  };
  return (
    <section className={cards.section} aria-label={name}>
      <h3>{name}</h3>
      <table className={styles.both}>
        <thead>
          <tr>
            <td />
            <th scope="col">As it is here</th>
            <th scope="col">The other version</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.name}>
              <th scope="row">{row.name}</th>
              <td>{row.here}</td>
              <td>{row.other}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <div className={cards.actions}>
        <Action onPress={keep} aria-label={`Keep ${name} as it is here`}>
          {valueAt(site, place) === undefined ? 'Leave it away' : 'Keep it as it is here'}
        </Action>
        <Action onPress={take} aria-label={`Take the other version of ${name}`}>
          {other === null ? 'Take it away' : 'Take the other'}
        </Action>
        <Action
          look="quiet"
          onPress={() => lookAt(withOther, `The other version of ${name}`, null)}
          aria-label={`Look at the other version of ${name} on the plan`}
        >
          Look at the other on the plan
        </Action>
      </div>
    </section>
  );
}
