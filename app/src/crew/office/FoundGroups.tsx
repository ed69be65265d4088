import {
  type AsFound,
  aboutKey,
  type Derived,
  type FoundPlace,
  type Site,
  targetOfFind,
} from '@footmark/site';
import { Button } from 'react-aria-components';
import { bringIntoView } from '../../canvas/planView';
import cards from '../../cards/cards.module.css';
import { show } from '../../session/workbench';
import { FoundEntry } from './FoundEntry';
import styles from './office.module.css';

type Props = {
  readonly site: Site;
  readonly derived: Derived;
  readonly only?: (record: AsFound) => boolean;
  readonly canRemove?: boolean;
  /** Photos that are not on the device yet, by their ids. */
  readonly photos?: ReadonlyMap<string, File>;
};

const NO_PHOTOS: ReadonlyMap<string, File> = new Map();

/** What was found, mark by mark: what several crews say of one stands side by side. */
export function FoundGroups({
  site,
  derived,
  only = () => true,
  canRemove = false,
  photos = NO_PHOTOS,
}: Props) {
  const groups = new Map<string, FoundPlace[]>();
  for (const one of derived.found) {
    if (!only(one.record)) continue;
    const key = aboutKey(one.record.about) ?? one.record.id;
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  return (
    <>
      {[...groups].map(([key, found]) => (
        <article key={key} className={styles.group} aria-label={`Found at ${labelOf(found)}`}>
          <Button className={styles.label ?? ''} onPress={() => showFound(found)}>
            {labelOf(found)}
          </Button>
          <div className={styles.beside} data-several={found.length > 1}>
            {found.map((one) => (
              <FoundEntry
                key={one.record.id}
                one={one}
                site={site}
                derived={derived}
                canRemove={canRemove}
                photos={photos}
              />
            ))}
          </div>
        </article>
      ))}
      {groups.size === 0 ? (
        <p className={cards.empty}>No places or depths were put down, only ticks.</p>
      ) : null}
    </>
  );
}

function labelOf(found: readonly FoundPlace[]): string {
  const named = found.find(({ label }) => label !== '');
  if (named === undefined) return 'a place of its own';
  return named.record.about.is === 'place' ? `Near ${named.label}` : named.label;
}

/** Shows the mark that was looked for, else where something was found. */
function showFound(found: readonly FoundPlace[]): void {
  const [first] = found;
  if (first === undefined) return;
  const target = targetOfFind(first);
  const at = first.at ?? first.sought?.at;
  if (target.kind !== 'site') show(target);
  if (at) bringIntoView(at);
}
