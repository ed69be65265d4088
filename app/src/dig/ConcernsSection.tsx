import { concerns } from '@footmark/dig';
import type { CardThing } from '@footmark/words';
import { useState } from 'react';
import cards from '../cards/cards.module.css';
import { Action } from '../controls/Action';
import { useDigging } from './digging';
import { FindingList } from './FindingLists';
import { useInMotion } from './inMotion';

/** How many stand there at first. */
const FIRST = 5;

/** What digs and pipes do to a thing, also while it is being moved. */
export function ConcernsSection({ here }: { readonly here: CardThing }) {
  const [all, setAll] = useState(false);
  const byMoved = useInMotion((m) => m.byMoved);
  const { findings } = useDigging();
  const found = (byMoved?.findings ?? findings).filter((f) => concerns(f, here));
  const shown = all || found.length <= FIRST + 1 ? found.length : FIRST;
  if (found.length === 0) return null;
  return (
    <section className={cards.section} aria-label="What concerns it">
      <h3>What concerns it</h3>
      <FindingList findings={found.slice(0, shown)} here={here} />
      {shown < found.length ? (
        <Action look="quiet" onPress={() => setAll(true)}>
          {found.length - shown} more
        </Action>
      ) : null}
    </section>
  );
}
