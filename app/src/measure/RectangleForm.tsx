import { formatBearing, parseAzimuth, type Spot } from '@footmark/site';
import { useState } from 'react';
import { Action } from '../controls/Action';
import { MeasureField } from '../controls/MeasureField';
import { Segments } from '../controls/Segments';
import { LengthField } from '../controls/unitFields';
import styles from './measure.module.css';

type Props = {
  /** Called with the three corners that follow the one that was put down. */
  readonly onCorners: (spots: readonly Spot[]) => void;
};

const QUARTER = Math.PI / 2;

/** Takes down a rectangle from its first corner: the front, which way it runs, and how deep to which side. */
export function RectangleForm({ onCorners }: Props) {
  const [front, setFront] = useState<number | undefined>(undefined);
  const [depth, setDepth] = useState<number | undefined>(undefined);
  const [azimuth, setAzimuth] = useState<number | undefined>(QUARTER);
  const [side, setSide] = useState<'left' | 'right'>('left');
  const ready = front !== undefined && front > 0 && depth !== undefined && depth > 0 && azimuth !== undefined;
  const make = () => {
    if (!ready) return;
    const turn = side === 'left' ? -QUARTER : QUARTER;
    onCorners([
      { by: 'course', azimuth, distance: front },
      { by: 'turn', turn, distance: depth },
      { by: 'turn', turn, distance: front },
    ]);
  };
  return (
    <form
      className={styles.form}
      onSubmit={(event) => {
        event.preventDefault();
        make();
      }}
    >
      <div className={styles.pair}>
        <LengthField label="Front" value={front} onChange={setFront} when="typing" />
        <LengthField label="Depth" value={depth} onChange={setDepth} when="typing" onEnter={make} />
      </div>
      <div className={styles.pair}>
        <MeasureField
          label="Front runs"
          value={azimuth}
          parse={parseAzimuth}
          print={(a) => formatBearing(a, { plain: true })}
          onChange={setAzimuth}
          when="typing"
        />
        <Segments
          label="Depth to the"
          value={side}
          options={[
            { id: 'left', name: 'Left' },
            { id: 'right', name: 'Right' },
          ]}
          onChange={setSide}
        />
      </div>
      <Action look="primary" type="submit" wide isDisabled={!ready}>
        Make the rectangle
      </Action>
    </form>
  );
}
