import { azimuthBetween, distance, ringArea } from '@footmark/geometry';
import { directionText, lengthText } from '@footmark/words';
import { Undo2, X } from 'lucide-react';
import { Action } from '../controls/Action';
import { areaText } from '../measure/areaText';
import { useSite } from '../session/siteSession';
import { take } from '../session/workbench';
import type { MeasureTool } from '../tools/tool';
import { stepBack } from '../tools/useTool';
import styles from './cards.module.css';
import { Fact } from './Fact';

/** Lengths and directions read off the plan, leg by leg, with the sum and, from three points on, the area. */
export function MeasureCard({ tool }: { readonly tool: MeasureTool }) {
  const site = useSite();
  const legs = tool.points.slice(1).flatMap((to, i) => {
    const from = tool.points[i];
    return from === undefined ? [] : [{ from, to, length: distance(from, to) }];
  });
  const total = legs.reduce((sum, leg) => sum + leg.length, 0);
  return (
    <section className={styles.card} aria-label="Measure">
      <div className={styles.head}>
        <h2>Measure</h2>
        <Action look="quiet" onPress={() => take(null)}>
          <X size={20} aria-hidden /> Done
        </Action>
      </div>
      <p className={styles.empty}>
        {legs.length === 0
          ? 'Tap two places on the plan. Corners, middles and lines pull.'
          : 'Tap on to measure further.'}
      </p>
      {legs.length > 0 ? (
        <dl className={styles.facts}>
          {legs.map((leg) => (
            <Fact
              key={`${leg.from.x},${leg.from.y},${leg.to.x},${leg.to.y}`}
              name={directionText(azimuthBetween(leg.from, leg.to), site.units)}
            >
              {lengthText(leg.length, site.units)}
            </Fact>
          ))}
          {legs.length > 1 ? <Fact name="In all">{lengthText(total, site.units)}</Fact> : null}
          {tool.points.length > 2 ? (
            <Fact name="Area between them">{areaText(Math.abs(ringArea(tool.points)), site.units)}</Fact>
          ) : null}
        </dl>
      ) : null}
      <div className={styles.actions}>
        <Action onPress={stepBack} isDisabled={tool.points.length === 0}>
          <Undo2 size={20} aria-hidden /> Take back the last point
        </Action>
      </div>
    </section>
  );
}
