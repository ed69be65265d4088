import { parseBend } from '@footmark/site';
import { angleText } from '@footmark/words';
import { useState } from 'react';
import { Choice } from '../controls/Choice';
import { MeasureField } from '../controls/MeasureField';
import styles from './cards.module.css';

/** Turns of the bends that drains are made of: 1/16, 1/8, 1/6 and 1/4 of a circle (lists of ASTM A74). */
const BENDS_DEG = [22.5, 45, 60, 90] as const;
/** Files keep turns to a millionth of a radian and better. */
const SAME_TURN_RAD = 1e-6;

const OF_DEGREE = Math.PI / 180;

type Props = {
  readonly bend: number | undefined;
  readonly onChange: (bend: number | undefined) => void;
};

/** By how much the fitting at a point is known to turn the pipe: one of the usual bends, another turn, or not known. */
export function BendField({ bend, onChange }: Props) {
  const [asking, setAsking] = useState(false);
  const usual = BENDS_DEG.find((deg) => Math.abs(deg * OF_DEGREE - (bend ?? Number.NaN)) < SAME_TURN_RAD);
  const isOther = asking || (bend !== undefined && usual === undefined);
  return (
    <div className={styles.pair}>
      <Choice
        label="The fitting turns it by"
        options={[
          { id: '', name: 'Not known' },
          ...BENDS_DEG.map((deg) => ({ id: String(deg), name: `${deg}°` })),
          { id: 'other', name: 'Another turn' },
        ]}
        value={isOther ? 'other' : usual === undefined ? '' : String(usual)}
        onChange={(id) => {
          setAsking(id === 'other');
          if (id !== 'other') onChange(id === '' ? undefined : Number(id) * OF_DEGREE);
        }}
      />
      {isOther ? (
        <MeasureField
          label="Turn, in degrees"
          value={bend}
          parse={parseBend}
          print={(radians) => angleDegrees(radians)}
          hint="To whichever side it is drawn."
          onChange={(turn) => {
            setAsking(false);
            onChange(turn);
          }}
        />
      ) : (
        <p className={styles.hintText}>
          {bend === undefined
            ? 'If it was seen or dug up. The fit of the runs holds the pipe to it.'
            : `The fit of the runs holds the pipe to ${angleText(bend)}, to whichever side it is drawn.`}
        </p>
      )}
    </div>
  );
}

function angleDegrees(radians: number): string {
  return String(Number((radians / OF_DEGREE).toFixed(4)));
}
