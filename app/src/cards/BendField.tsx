import { parseBend, SAME_TURN_RAD, standardBendOf, standardBends } from '@footmark/site';
import { angleText } from '@footmark/words';
import { useState } from 'react';
import { Choice } from '../controls/Choice';
import { MeasureField } from '../controls/MeasureField';
import styles from './cards.module.css';

const OF_DEGREE = Math.PI / 180;

type Props = {
  readonly bend: number | undefined;
  readonly onChange: (bend: number | undefined) => void;
};

/** By how much the fitting at a point is known to turn the pipe: one of the usual bends, another turn, or not known. */
export function BendField({ bend, onChange }: Props) {
  const [asking, setAsking] = useState(false);
  const usual = bend === undefined ? null : standardBendOf(bend, SAME_TURN_RAD);
  const isOther = asking || (bend !== undefined && usual === null);
  return (
    <div className={styles.pair}>
      <Choice
        label="The fitting turns it by"
        options={[
          { id: '', name: 'Not known' },
          ...standardBends.map(({ name, turn }) => ({ id: name, name: `${angleDegrees(turn)}°` })),
          { id: 'other', name: 'Another turn' },
        ]}
        value={isOther ? 'other' : (usual?.name ?? '')}
        onChange={(id) => {
          setAsking(id === 'other');
          if (id !== 'other') onChange(standardBends.find(({ name }) => name === id)?.turn);
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
