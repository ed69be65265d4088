import { arcFromPlat, type PlatArcProblem } from '@footmark/geometry';
import { formatBearing, type LegSpot, parseAzimuth } from '@footmark/site';
import { angleText, lengthText } from '@footmark/words';
import { useState } from 'react';
import { Action } from '../controls/Action';
import { MeasureField } from '../controls/MeasureField';
import { Segments } from '../controls/Segments';
import { Tick } from '../controls/Tick';
import { LengthField } from '../controls/unitFields';
import { useSite } from '../session/siteSession';
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
  const problem = solved === null || solved.ok ? null : problemText(solved.code, solved.values ?? {});
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
      {problem === null ? null : <p className={styles.problem}>{problem}</p>}
      <Action type="submit" wide isDisabled={!solved?.ok}>
        Add this curve
      </Action>
    </form>
  );

  function problemText(code: PlatArcProblem, values: Readonly<Record<string, number>>): string | null {
    const given = values.given ?? 0;
    const computed = values.computed ?? 0;
    switch (code) {
      case 'direction-missing':
      case 'extent-missing':
        return null;
      case 'not-positive':
        return 'Radius, length and angle are all above nothing.';
      case 'past-full-circle':
        return `This arc would turn through ${angleText(given)}, a full circle and more. Check its length and radius.`;
      case 'delta-against-arc-length':
        return `Length and angle contradict each other: with this radius and angle the arc is ${lengthText(computed, units)} long, not ${lengthText(given, units)}.`;
      case 'chord-past-diameter':
      case 'chord-against-delta':
      case 'chord-against-arc-length':
        return `The chord contradicts the rest: it would be ${lengthText(computed, units)}, not ${lengthText(given, units)}.`;
    }
  }
}
