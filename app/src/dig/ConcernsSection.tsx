import type { AnyDigFinding } from '@footmark/dig';
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
  const concerns = (byMoved?.findings ?? findings).filter((f) => isAbout(f, here));
  const shown = all || concerns.length <= FIRST + 1 ? concerns.length : FIRST;
  if (concerns.length === 0) return null;
  return (
    <section className={cards.section} aria-label="What concerns it">
      <h3>What concerns it</h3>
      <FindingList findings={concerns.slice(0, shown)} here={here} />
      {shown < concerns.length ? (
        <Action look="quiet" onPress={() => setAll(true)}>
          {concerns.length - shown} more
        </Action>
      ) : null}
    </section>
  );
}

function isAbout({ at, values }: AnyDigFinding, { kind, id }: CardThing): boolean {
  if (at.kind === kind && at.id === id) return true;
  switch (kind) {
    case 'feature':
      return (
        ('tree' in values && values.tree === id) ||
        ('feature' in values && values.feature === id) ||
        ('service' in values && values.service === id)
      );
    case 'path':
      return 'path' in values && values.path === id;
    case 'dig':
      return 'dig' in values && values.dig === id;
    case 'reading':
      return false;
  }
}
