import { type Ref, refKey, type Spot } from '@footmark/site';
import { lengthText } from '@footmark/words';
import { pointName } from '../measure/pointChoices';
import { useDerived, useSite } from '../session/siteSession';
import styles from './cards.module.css';

type Props = { readonly self: Ref; readonly spot: Spot };

/** How well three and more tapes agree: by how much each is longer or shorter than where they together put the point. */
export function TapeResiduals({ self, spot }: Props) {
  const site = useSite();
  const derived = useDerived();
  const residuals = derived.points.get(refKey(self))?.tapeResiduals;
  if (spot.by !== 'tapes' || residuals === undefined) return null;
  return (
    <dl className={styles.facts} aria-label="How the tapes agree">
      {spot.tapes.map((tape, i) => {
        const off = residuals[i] ?? 0;
        const side = off > 0 ? 'too long' : 'too short';
        return (
          <div key={refKey(tape.from)} className={styles.factRow}>
            <dt>{pointName(site, tape.from)}</dt>
            <dd>
              {Math.abs(off) < AGREES_M ? 'agrees' : `${lengthText(Math.abs(off), site.units)} ${side}`}
            </dd>
          </div>
        );
      })}
    </dl>
  );
}

/** Nobody reads a tape in a yard to less (m). */
const AGREES_M = 0.003;
