import type { StillThere, Units, VisitComparison, VisitThing } from '@footmark/site';
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
                    {isStillThere(thing) ? `, ${words.faredText(thing, units)}` : ''}
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

function isStillThere(thing: Compared): thing is StillThere {
  return thing.moved !== undefined;
}
