import { addPair, type PairAgreement, type PairSuggestion, removePair, tellApart } from '@footmark/site';
import { Link2, Trash2, X } from 'lucide-react';
import { useState } from 'react';
import { Button } from 'react-aria-components';
import cards from '../cards/cards.module.css';
import { Fold } from '../cards/Fold';
import { Action } from '../controls/Action';
import { edit, useDerived, useSite } from '../session/siteSession';
import { newId } from '../tools/newId';
import { words } from '../words';
import styles from './fit.module.css';
import { PairForm } from './PairForm';
import { showReadings } from './showEvidence';

/** What two runs both saw, from both ends: what may be one thing, and what is known to be, with how well the runs agree on it. */
export function PairsSection() {
  const site = useSite();
  const { pairs, pairSuggestions: open } = useDerived();
  const [choosing, setChoosing] = useState(false);
  if (site.runs.length < 2) return null;
  return (
    <div className={cards.section}>
      <h3>The same thing from two runs</h3>
      {open.length + pairs.length === 0 ? (
        <p className={cards.empty}>No two runs have seen a thing of one kind near the same place.</p>
      ) : (
        <ul className={cards.rows}>
          {pairs.map((agreement) => (
            <li key={agreement.pair.id}>
              <PairRow agreement={agreement} />
            </li>
          ))}
          {open.map((suggestion) => (
            <li key={`${suggestion.a.reading.id}/${suggestion.b.reading.id}`}>
              <SuggestionRow suggestion={suggestion} />
            </li>
          ))}
        </ul>
      )}
      {choosing ? (
        <PairForm onDone={() => setChoosing(false)} />
      ) : (
        <div className={cards.actions}>
          <Action onPress={() => setChoosing(true)}>
            <Link2 size={20} aria-hidden /> Pair two other readings
          </Action>
        </div>
      )}
    </div>
  );
}

function PairRow({ agreement }: { readonly agreement: PairAgreement }) {
  const site = useSite();
  const { pair, a, b, closure, sigma, explanations } = agreement;
  const labels = `${a.label} and ${b.label}`;
  return (
    <div className={styles.item}>
      <div className={styles.itemHead}>
        <SightsButton sights={agreement} />
        <Action
          look="icon"
          aria-label={`${labels} are not one thing after all`}
          onPress={() => edit(`Take apart ${labels}`, (s) => removePair(s, { id: pair.id }))}
        >
          <Trash2 size={20} aria-hidden />
        </Action>
      </div>
      <p>One thing. {words.apartText(agreement, site)}</p>
      {Math.abs(closure) < sigma ? null : (
        <div className={styles.fold}>
          <Fold title="What alone would explain it">
            <ul className={styles.list}>
              {explanations.map((explanation) => (
                <li key={`${explanation.is}${explanation.is === 'pipe' ? '' : explanation.run}`}>
                  {words.explanationText(explanation, site)}
                </li>
              ))}
            </ul>
          </Fold>
        </div>
      )}
    </div>
  );
}

function SuggestionRow({ suggestion }: { readonly suggestion: PairSuggestion }) {
  const site = useSite();
  const { a, b } = suggestion;
  const labels = `${a.label} and ${b.label}`;
  const pair = () => ({
    id: newId('q'),
    a: { run: a.run.id, reading: a.reading.id },
    b: { run: b.run.id, reading: b.reading.id },
  });
  return (
    <div className={styles.item}>
      <SightsButton sights={suggestion} />
      <p>One thing, seen twice? {words.apartText(suggestion, site)}</p>
      <div className={cards.actions}>
        <Action
          aria-label={`Same thing: ${labels}`}
          onPress={() => edit(`${labels} are one thing`, (s) => addPair(s, { pair: pair() }))}
        >
          <Link2 size={20} aria-hidden /> Same thing
        </Action>
        <Action
          look="quiet"
          aria-label={`Not the same: ${labels}`}
          onPress={() => edit(`Not the same: ${labels}`, (s) => tellApart(s, { pair: pair() }))}
        >
          <X size={20} aria-hidden /> Not the same
        </Action>
      </div>
    </div>
  );
}

/** Both sights of a thing; a tap shows them on the plan. */
function SightsButton({ sights: { a, b } }: { readonly sights: Pick<PairSuggestion, 'a' | 'b'> }) {
  const seen = [a, b].map((m) => words.observationName(m.reading.seen));
  return (
    <Button
      className={styles.shows ?? ''}
      onPress={() => showReadings(a.run.id, [a.reading.id, b.reading.id])}
    >
      {a.label} and {b.label}
      <small>{seen[0] === seen[1] ? seen[0] : seen.join(' and ')}</small>
    </Button>
  );
}
