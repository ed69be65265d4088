import { arcFromPlat, type Failure, type PlatArcProblem } from '@footmark/geometry';
import { formatBearing, type LegSpot, parseAzimuth } from '@footmark/site';
import type { ArcProblem } from '@footmark/words';
import { useState } from 'react';
import { Action } from '../controls/Action';
import { MeasureField } from '../controls/MeasureField';
import { Segments } from '../controls/Segments';
import { Tick } from '../controls/Tick';
import { LengthField } from '../controls/unitFields';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import styles from './measure.module.css';

type Props = {
  /** Whether a leg lies before, which the curve can leave in the direction of. */
  readonly hasLegBefore: boolean;
  readonly onArc: (spot: LegSpot) => void;
};

/** Takes down a curve as a plat tells it: radius, and the arc's length or the central angle; what contradicts is named. */
export function ArcForm({ hasLegBefore, onArc }: Props) {
  const { units } = useSite();
  const [radius, setRadius] = useState<number | undefined>(undefined);
  const [length, setLength] = useState<number | undefined>(undefined);
  const [delta, setDelta] = useState<number | undefined>(undefined);
  const [chord, setChord] = useState<number | undefined>(undefined);
  const [turn, setTurn] = useState<'left' | 'right'>('right');
  const [tangent, setTangent] = useState(hasLegBefore);
  const solved =
    radius === undefined || (length === undefined && delta === undefined)
      ? null
      : arcFromPlat({
          radius,
          turn,
          tangent,
          ...(length === undefined ? {} : { arcLength: length }),
          ...(delta === undefined ? {} : { delta }),
          ...(tangent || chord === undefined ? {} : { chordAzimuth: chord }),
        });
  const add = () => {
    if (solved?.ok) onArc({ by: 'arc', ...solved.value });
  };
  const problem = solved === null || solved.ok ? null : contradiction(solved);
  return (
    <form
      className={styles.form}
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      <Segments
        label="The curve turns"
        value={turn}
        options={[
          { id: 'left', name: 'Left' },
          { id: 'right', name: 'Right' },
        ]}
        onChange={setTurn}
      />
      <LengthField label="Radius" value={radius} onChange={setRadius} when="typing" />
      <div className={styles.pair}>
        <LengthField label="Length of the arc" value={length} onChange={setLength} when="typing" />
        <MeasureField
          label="or central angle"
          value={delta}
          parse={parseAzimuth}
          print={String}
          onChange={setDelta}
          placeholder={'45°30\'15"'}
          when="typing"
        />
      </div>
      {hasLegBefore ? (
        <Tick isSelected={tangent} onChange={setTangent}>
          Goes on from the leg before without a corner
        </Tick>
      ) : null}
      {tangent ? null : (
        <MeasureField
          label="Bearing of the chord"
          value={chord}
          parse={parseAzimuth}
          print={(azimuth) => formatBearing(azimuth, { plain: true })}
          onChange={setChord}
          placeholder="N 45 E"
          when="typing"
        />
      )}
      {problem === null ? null : <p className={styles.problem}>{words.arcProblemText(problem, units)}</p>}
      <Action type="submit" wide isDisabled={!solved?.ok}>
        Add this curve
      </Action>
    </form>
  );
}

/** What contradicts itself; null while something is still to be typed. */
function contradiction({ code, values = {} }: Failure<PlatArcProblem>): ArcProblem | null {
  const { given = 0, computed = 0 } = values;
  switch (code) {
    case 'direction-missing':
    case 'extent-missing':
      return null;
    default:
      return { code, given, computed };
  }
}
