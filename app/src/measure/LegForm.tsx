import type { LegSpot } from '@footmark/site';
import { CornerUpLeft, CornerUpRight, MoveUp } from 'lucide-react';
import { useEffect, useMemo, useRef, useState } from 'react';
import { Input, Label, Text, TextField } from 'react-aria-components';
import { Action } from '../controls/Action';
import controls from '../controls/controls.module.css';
import { LengthField } from '../controls/unitFields';
import { words } from '../words';
import { legSpot, parseLegDirection } from './legDirection';
import styles from './measure.module.css';

type Props = {
  /** Whether the next leg can be told as a turn from the one before. */
  readonly hasLegBefore: boolean;
  readonly onLeg: (spot: LegSpot) => void;
  /** Called with the leg as it is being typed, null while it is not complete. */
  readonly onTyping?: (spot: LegSpot | null) => void;
};

/** Ids of the two fields, so that what is typed while drawing can go there. */
export const LEG_FIELDS = { direction: 'leg-direction', length: 'leg-length' } as const;

const TURNS = [
  { text: 'L 90', name: 'Left 90°', icon: CornerUpLeft },
  { text: 'straight', name: 'Straight on', icon: MoveUp },
  { text: 'R 90', name: 'Right 90°', icon: CornerUpRight },
];

/** Takes the next leg of a wall, a boundary or a pipe as it was measured: which way, and how long. Enter adds it. */
export function LegForm({ hasLegBefore, onLeg, onTyping }: Props) {
  const [direction, setDirection] = useState('');
  const [length, setLength] = useState<number | undefined>(undefined);
  const [legs, setLegs] = useState(0);
  const lengthInput = useRef<HTMLInputElement>(null);
  const directionInput = useRef<HTMLInputElement>(null);
  const read = useMemo(
    () => (direction.trim() === '' ? null : parseLegDirection(direction, hasLegBefore)),
    [direction, hasLegBefore],
  );
  const leg = useMemo(
    () => (read?.ok && length !== undefined && length > 0 ? legSpot(read.value, length) : null),
    [read, length],
  );
  useEffect(() => onTyping?.(leg), [leg, onTyping]);

  const add = () => {
    if (leg === null) {
      (read?.ok === true ? lengthInput : directionInput).current?.focus();
      return;
    }
    onLeg(leg);
    setLength(undefined);
    setDirection('');
    setLegs((n) => n + 1);
    directionInput.current?.focus();
  };
  return (
    <form
      className={styles.form}
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      {hasLegBefore ? (
        <div className={styles.turns}>
          {TURNS.map(({ text, name, icon: Icon }) => (
            <Action
              key={text}
              onPress={() => {
                setDirection(text);
                lengthInput.current?.focus();
              }}
            >
              <Icon size={18} aria-hidden /> {name}
            </Action>
          ))}
        </div>
      ) : null}
      <div className={styles.pair}>
        <TextField
          className={controls.field ?? ''}
          value={direction}
          onChange={setDirection}
          isInvalid={read?.ok === false}
        >
          <Label className={controls.label ?? ''}>
            {hasLegBefore ? 'Turn or bearing' : 'Bearing or azimuth'}
          </Label>
          <Input
            ref={directionInput}
            id={LEG_FIELDS.direction}
            className={controls.input ?? ''}
            placeholder={hasLegBefore ? 'R 90' : 'N 45 E'}
            autoComplete="off"
          />
          {read?.ok === false ? (
            <Text slot="errorMessage" className={controls.error ?? ''}>
              {words.parseProblemText(read)}
            </Text>
          ) : null}
        </TextField>
        <LengthField
          key={legs}
          label="Length"
          value={length}
          onChange={setLength}
          when="typing"
          inputRef={lengthInput}
          inputId={LEG_FIELDS.length}
          onEnter={add}
        />
      </div>
      <Action type="submit" wide isDisabled={leg === null}>
        Add this leg
      </Action>
    </form>
  );
}
