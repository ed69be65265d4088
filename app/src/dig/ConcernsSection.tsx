import { type AnyDigFinding, concerns } from '@footmark/dig';
import type { CardThing } from '@footmark/words';
import { useDeferredValue } from 'react';
import cards from '../cards/cards.module.css';
import { useDigging } from './digging';
import { FindingList } from './FindingLists';
import { useInMotion } from './inMotion';

/** How many stand there at first. */
const FIRST = 5;

type Props = {
  readonly here: CardThing;
  /** What the card says already. */
  readonly told?: readonly AnyDigFinding['code'][];
};

/** What digs and pipes do to a thing, also while it is being moved. An edit does not wait for it. */
export function ConcernsSection({ here, told = [] }: Props) {
  const byMoved = useInMotion((m) => m.byMoved);
  // nothing of what is deferred is computed before it is read
  const digging = useDeferredValue(useDigging());
  const found = (byMoved?.findings ?? digging.findings).filter(
    (f) => concerns(f, here) && !told.includes(f.code),
  );
  if (found.length === 0) return null;
  return (
    <section className={cards.section} aria-label="What concerns it">
      <h3>What concerns it</h3>
      <FindingList findings={found} here={here} first={FIRST} />
    </section>
  );
}
