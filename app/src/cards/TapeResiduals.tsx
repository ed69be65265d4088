import { type Ref, refKey, type Spot } from '@footmark/site';
import { lengthText } from '@footmark/words';
import { pointName } from '../measure/pointChoices';
import { useDerived, useSite } from '../session/siteSession';
import styles from './cards.module.css';
import { Fact } from './Fact';

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
          <Fact key={refKey(tape.from)} name={pointName(site, tape.from)}>
            {Math.abs(off) < AGREES_M ? 'agrees' : `${lengthText(Math.abs(off), site.units)} ${side}`}
          </Fact>
        );
      })}
    </dl>
  );
}

/** Nobody reads a tape in a yard to less (m). */
const AGREES_M = 0.003;
