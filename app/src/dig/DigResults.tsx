import type { Excavation } from '@footmark/dig';
import { type RuleName, WITHIN_95 } from '@footmark/site';
import { lengthText } from '@footmark/words';
import type { ReactNode } from 'react';
import cards from '../cards/cards.module.css';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import styles from './dig.module.css';
import { RuleSource } from './RuleSource';

/** What a planned dig takes. Each number opens to how it came about and the rule behind it. */
export function DigResults({ excavation }: { readonly excavation: Excavation }) {
  const site = useSite();
  const { units } = site;
  const { dig, depth, sides, bottom, top, volume, spoil, egress, restore } = excavation;
  const size = (metres: number) => words.sureText(metres, units);
  return (
    <div className={cards.section}>
      <h3>What it takes</h3>
      <div>
        <Result name="Depth" value={depth === null ? null : spanText(depth.least, depth.most, size)}>
          {depth === null ? null : depth.from === 'said' ? (
            <p>As you said it.</p>
          ) : (
            <>
              <p>
                From the ground to the inside bottom of the pipe, and bedding below it;{' '}
                {words.giveOrTakeText(WITHIN_95 * depth.sigma, units)}.
              </p>
              <RuleSource rule="beddingDepth" />
            </>
          )}
        </Result>
        <Result
          name="Bottom"
          value={bottom === null ? null : `${size(bottom.width)} × ${size(bottom.length)}`}
        >
          <p>
            {dig.bottomWidth === undefined
              ? dig.is === 'pit'
                ? 'The hole of its mark, with room to work on all sides.'
                : 'Width by the rule.'
              : 'Width as you said it.'}
          </p>
          {dig.bottomWidth === undefined ? (
            <RuleSource rule={dig.is === 'pit' ? 'workSpace' : 'bottomWidth'} />
          ) : null}
        </Result>
        <Result name="Width at the top" value={top === null ? null : size(top.width)}>
          {sides.row === null ? (
            <p>Straight sides, {words.protectionName(sides.protection).toLowerCase()}.</p>
          ) : (
            <>
              <p>
                {sides.protection === 'shield'
                  ? `Straight for ${size(sides.upright)} behind the shield. `
                  : ''}
                {words.soilName(sides.as)}: cut back {words.acrossText(sides.slope)}.
              </p>
              {sides.protection === 'shield' ? <RuleSource rule="shieldAbove" /> : null}
              <RuleSource rule={sides.row} />
            </>
          )}
        </Result>
        <Result name="Length at the top" value={top === null ? null : size(top.length)}>
          <p>From end to end; the ends are cut back as the sides are.</p>
        </Result>
        <Result name="Outline at the ground" value={top === null ? null : words.areaText(top.area, units)}>
          <p>The ground to mark white before the dig, so that others see what is asked about.</p>
        </Result>
        <Result
          name="Sides"
          value={words.protectionName(sides.protection)}
          rule={(depth?.most ?? 0) > 0 ? 'protectionDepth' : null}
        />
        <Result
          name="Dug out"
          value={volume === null ? null : `${words.volumeText(volume, units)} in the ground`}
        >
          <p>Top and bottom outline and the depths between them.</p>
        </Result>
        <Result name="Spoil" value={spoil === null ? null : `${words.volumeText(spoil.volume, units)} loose`}>
          {spoil === null ? null : (
            <>
              <p>
                {spoil.side === 'away' ? 'Away by truck.' : `To the ${spoil.side} of the flow.`} A heap{' '}
                {size(spoil.width)} wide and {size(spoil.height)} high, {lengthText(spoil.setback, units)}{' '}
                back from the edge.
              </p>
              <p>
                Left: {roomText(spoil.left.blocked)}. Right: {roomText(spoil.right.blocked)}.
              </p>
              <RuleSource rule="spoilSetback" />
              <RuleSource rule="soilSwell" />
            </>
          )}
        </Result>
        <Result
          name="Ladder or ramp"
          value={
            egress.length === 0
              ? depth === null
                ? null
                : 'Not asked at this depth'
              : `${depth === null ? 'At least at' : 'At'} ${egress.map((e) => lengthText(e.station, units)).join(', ')}`
          }
          rule="egressDepth"
        />
        <Result name="To put back" value={restore === null ? null : restoreText(restore)}>
          {restore === null ? null : (
            <ul>
              {restore.pavements.map(({ feature, area }) => (
                <li key={feature}>
                  {words.targetName({ kind: 'feature', id: feature }, site)}: {words.areaText(area, units)}
                </li>
              ))}
              <li>Ground and lawn on the lot: {words.areaText(restore.lawn, units)}</li>
              {restore.beyond > 0 ? (
                <li>Beyond the boundary: {words.areaText(restore.beyond, units)}</li>
              ) : null}
            </ul>
          )}
        </Result>
      </div>
    </div>
  );

  function roomText(blocked: readonly string[]): string {
    if (blocked.length === 0) return 'there is room';
    return `no room, ${blocked.map((id) => words.targetName({ kind: 'feature', id }, site)).join(', ')}`;
  }

  function restoreText({ paved, lawn, beyond }: NonNullable<Excavation['restore']>): string {
    const ground = `${words.areaText(lawn + beyond, units)} of ground`;
    return paved > 0 ? `${words.areaText(paved, units)} paved, ${ground}` : ground;
  }
}

function spanText(least: number, most: number, size: (metres: number) => string): string {
  const [low, high] = [size(least), size(most)];
  return low === high ? high : `${low} to ${high}`;
}

type ResultProps = {
  readonly name: string;
  /** Null: not known. */
  readonly value: string | null;
  readonly rule?: RuleName | null;
  readonly children?: ReactNode;
};

function Result({ name, value, rule = null, children }: ResultProps) {
  return (
    <details className={styles.result}>
      <summary>
        <span>{name}</span>
        <b>{value ?? 'Not known'}</b>
      </summary>
      {value === null ? <p>What is missing stands in the list below.</p> : children}
      {value !== null && rule !== null ? <RuleSource rule={rule} /> : null}
    </details>
  );
}
