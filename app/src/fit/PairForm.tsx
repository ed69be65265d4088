import { addPair, type ReadingRef, type Site } from '@footmark/site';
import type { PairProblem } from '@footmark/words';
import { Link2, X } from 'lucide-react';
import { useState } from 'react';
import cards from '../cards/cards.module.css';
import { ReadingField } from '../cards/ReadingField';
import { Action } from '../controls/Action';
import { edit, useSite } from '../session/siteSession';
import { newId } from '../tools/newId';
import { words } from '../words';

/** Says that two readings of the person's own choice saw one thing. */
export function PairForm({ onDone }: { readonly onDone: () => void }) {
  const site = useSite();
  const [a, setA] = useState<ReadingRef | undefined>(undefined);
  const [b, setB] = useState<ReadingRef | undefined>(undefined);
  const problem = a === undefined || b === undefined ? null : problemOf(site, a, b);
  const pair = () => {
    if (a === undefined || b === undefined || problem !== null) return;
    const done = edit('Pair two readings', (s) => addPair(s, { pair: { id: newId('q'), a, b } }));
    if (done) onDone();
  };
  return (
    <div className={cards.entry}>
      <ReadingField label="This reading" value={a} onChange={setA} />
      <ReadingField label="saw the same as" value={b} onChange={setB} />
      {problem === null ? null : <p className={cards.problem}>{words.pairProblemText(problem)}</p>}
      <div className={cards.actions}>
        <Action
          look="primary"
          isDisabled={a === undefined || b === undefined || problem !== null}
          onPress={pair}
        >
          <Link2 size={20} aria-hidden /> Same thing
        </Action>
        <Action look="quiet" onPress={onDone}>
          <X size={20} aria-hidden /> Not now
        </Action>
      </div>
    </div>
  );
}

/** Why two readings cannot be a pair; null when they can. */
function problemOf({ pairs }: Site, a: ReadingRef, b: ReadingRef): PairProblem | null {
  if (a.reading === b.reading) return 'itself';
  if (a.run === b.run) return 'one-run';
  const both = new Set([a.reading, b.reading]);
  return pairs.some((p) => both.has(p.a.reading) && both.has(p.b.reading)) ? 'paired' : null;
}
