import {
  type StillThere,
  type Units,
  type VisitComparison,
  type VisitThing,
  WITHIN_95,
} from '@footmark/site';
import { lengthText } from '@footmark/words';
import { ArrowRight } from 'lucide-react';
import { Button } from 'react-aria-components';
import cards from '../cards/cards.module.css';
import { showPlace } from '../cards/showPlace';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import styles from './runs.module.css';

/** A thing of one visit, of the other, or of both. */
type Compared = Partial<StillThere>;

type Props = {
  readonly fate: keyof VisitComparison;
  readonly things: readonly Compared[];
};

/** Things of two visits that have fared alike, along the pipe. A press shows the last reading of one on the plan. */
export function ComparedThings({ fate, things }: Props) {
  const site = useSite();
  const { units } = site;
  if (things.length === 0) return null;
  const { title, text } = words.comparedText(fate);
  return (
    <section className={styles.visit} aria-label={`${title}, ${things.length}`}>
      <div>
        <h3 className={styles.fate}>
          {title}, {things.length}
        </h3>
        <p className={cards.sub}>{text}</p>
      </div>
      <ul className={cards.rows}>
        {things.map((thing) => {
          const shown = thing.after ?? thing.before;
          const mark = shown?.marks[0];
          if (shown === undefined || mark === undefined) return null;
          const path = words.targetName({ kind: 'path', id: shown.path }, site);
          return (
            <li key={mark.reading.id}>
              <Button
                className={cards.row ?? ''}
                onPress={() => showPlace({ kind: 'reading', run: mark.run.id, id: mark.reading.id })}
              >
                <span className={cards.grow}>
                  {words.observationName(shown.seen)}
                  <small>
                    {stationText(shown, units)} of {path}
                    {fateText(thing, units)}
                  </small>
                </span>
                <Labels thing={thing.before} />
                {thing.before && thing.after ? <ArrowRight size={18} aria-label="then" /> : null}
                <Labels thing={thing.after} />
              </Button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

function Labels({ thing }: { readonly thing: VisitThing | undefined }) {
  return thing === undefined ? null : (
    <span className={cards.paint}>{thing.marks.map((m) => m.label).join(' ')}</span>
  );
}

function stationText({ from, to }: VisitThing, units: Units): string {
  const begins = lengthText(from, units);
  return from === to ? `station ${begins}` : `stations ${begins} to ${lengthText(to, units)}`;
}

/** What has become of a thing that is still there: its severity, and how far apart the two visits have it. */
function fateText({ before, after, moved, sigma }: Compared, units: Units): string {
  if (before === undefined || after === undefined) return '';
  const [was, is] = [severityOf(before), severityOf(after)];
  const apart =
    moved === undefined || sigma === undefined
      ? ''
      : `; ${lengthText(Math.abs(moved), units)} apart by the counters, ${
          Math.abs(moved) <= WITHIN_95 * sigma ? 'within their errors' : 'more than their errors explain'
        }`;
  return `${was === is ? (is === '' ? '' : `, ${is} as before`) : `, ${was || 'not said'} before, ${is || 'not said'} after`}${apart}`;
}

function severityOf({ marks }: VisitThing): string {
  const said = marks.flatMap((m) => m.reading.severity ?? []);
  const [first] = said;
  return first === undefined ? '' : words.severityName(first).toLowerCase();
}
