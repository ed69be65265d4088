import { type Feature, type LegSpot, setBalance, setClosing } from '@footmark/site';
import { lengthText } from '@footmark/words';
import { useState } from 'react';
import { Action } from '../controls/Action';
import { Tick } from '../controls/Tick';
import { areaText } from '../measure/areaText';
import { LegForm } from '../measure/LegForm';
import { spotText } from '../measure/spotText';
import { edit, useDerived, useSite } from '../session/siteSession';
import styles from './cards.module.css';
import { Fact } from './Fact';

/** How an outline comes back to its first point: the last course as measured, the misclosure, and whether it is shared out. */
export function ClosureSection({ feature }: { readonly feature: Feature }) {
  const site = useSite();
  const derived = useDerived();
  const [typing, setTyping] = useState(false);
  const closure = derived.features.get(feature.id)?.closure ?? null;
  const [first, last] = [feature.vertices[0], feature.vertices.at(-1)];
  const close = (closing: LegSpot | undefined) => {
    const done = edit(closing === undefined ? 'Take the closing course away' : 'Close the outline', (s) =>
      setClosing(s, { id: feature.id, closing }),
    );
    if (done) setTyping(false);
  };
  const ends = `${last?.id.toUpperCase()} back to ${first?.id.toUpperCase()}`;
  return (
    <div className={styles.section}>
      <h3>Closing</h3>
      {feature.closing === undefined ? (
        <p className={styles.empty}>
          The last side, {ends}, is what the others leave. Type it as measured to see how well they close.
        </p>
      ) : (
        <p>
          {ends}: {spotText(feature.closing, site)}
        </p>
      )}
      {closure ? (
        <dl className={styles.facts}>
          <Fact name="Misclosure">{lengthText(closure.length, site.units)}</Fact>
          <Fact name="Ratio">{ratioText(closure.ratio)}</Fact>
          <Fact name="Round">{lengthText(closure.perimeter, site.units)}</Fact>
          <Fact name="Area">{areaText(closure.area, site.units)}</Fact>
        </dl>
      ) : null}
      {typing ? <LegForm hasLegBefore onLeg={(spot) => close(spot)} /> : null}
      <div className={styles.actions}>
        <Action onPress={() => setTyping((on) => !on)}>
          {typing ? 'Not now' : feature.closing === undefined ? 'Type the closing course' : 'Correct it'}
        </Action>
        {feature.closing === undefined ? null : (
          <Action onPress={() => close(undefined)}>Take it away</Action>
        )}
      </div>
      {closure ? (
        <Tick
          isSelected={feature.balance === 'compass'}
          onChange={(on) =>
            edit(on ? 'Share the misclosure out' : 'Leave the courses as measured', (s) =>
              setBalance(s, { id: feature.id, balance: on ? 'compass' : undefined }),
            )
          }
        >
          Share the misclosure out by the compass rule
        </Tick>
      ) : null}
    </div>
  );
}

function ratioText(ratio: number): string {
  return Number.isFinite(ratio) && ratio < 1e7 ? `1:${Math.round(ratio).toLocaleString('en-US')}` : 'closes';
}
