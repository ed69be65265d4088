import type { Services } from '@footmark/dig';
import { angleText } from '@footmark/words';
import cards from '../cards/cards.module.css';
import { Fact } from '../cards/Fact';
import { Fold } from '../cards/Fold';
import { useSite } from '../session/siteSession';
import { words } from '../words';

/** Where pipes cross other services, and how far a trench along them is dug by hand. */
export function ServicesFold({ services }: { readonly services: Services }) {
  const site = useSite();
  const { units } = site;
  const crossings = services.crossings.filter((c) => !c.joins);
  const byHand = services.paths.filter((p) => p.length > 0);
  if (crossings.length === 0 && byHand.length === 0) return null;
  const feature = (id: string) => words.targetName({ kind: 'feature', id }, site);
  const pipe = (id: string) => words.targetName({ kind: 'path', id }, site);
  return (
    <Fold title="Other services" result={`${crossings.length} crossed by a pipe`}>
      <dl className={cards.facts}>
        {crossings.map(({ path, feature: id, station, angle, gap, over }) => (
          <Fact
            key={`${path}/${id}/${station}`}
            name={`${feature(id)} crosses ${pipe(path)}`}
            note={
              gap === null || over === null
                ? 'How far apart in height is not known.'
                : `${words.sureText(gap, units)} ${over === 'service' ? 'above' : 'below'} the pipe.`
            }
          >
            {words.sureText(station, units)}, at {angleText(angle)}
          </Fact>
        ))}
        {byHand.map(({ path, feature: id, length }) => (
          <Fact
            key={`${path}/${id}/hand`}
            name={`By hand near ${feature(id)}`}
            note={`If all of ${pipe(path)} were trenched.`}
          >
            {words.sureText(length, units)}
          </Fact>
        ))}
      </dl>
    </Fold>
  );
}
