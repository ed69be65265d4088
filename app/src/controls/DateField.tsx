import { useId, useState } from 'react';
import controls from './controls.module.css';
import { useTypedText } from './useTypedText';

/** Nobody kept a camera's day before there were cameras in drains. */
const EARLIEST = '1950-01-01';
const LATEST = '9999-12-31';

type Props = {
  readonly label: string;
  /** As `2025-03-09`. */
  readonly value: string | undefined;
  readonly onChange: (date: string | undefined) => void;
};

/** A day of the calendar, typed or taken from the device's own calendar; taken over when the field is left. */
export function DateField({ label, value, onChange }: Props) {
  const id = useId();
  const { text, setText, sends } = useTypedText(value ?? '');
  const [refused, setRefused] = useState<{ readonly text: string; readonly why: string } | null>(null);
  const wrong = refused?.text === text ? refused.why : null;
  const take = (input: HTMLInputElement) => {
    const why = problemOf(input.validity);
    setRefused(why === null ? null : { text: input.value, why });
    if (why !== null || input.value === (value ?? '')) return;
    sends(input.value);
    onChange(input.value || undefined);
  };
  return (
    <div className={controls.field}>
      <label className={controls.label} htmlFor={id}>
        {label}
      </label>
      <input
        id={id}
        className={controls.input}
        type="date"
        min={EARLIEST}
        max={LATEST}
        value={text}
        aria-invalid={wrong !== null}
        {...(wrong !== null ? { 'data-invalid': true, 'aria-describedby': `${id}-error` } : {})}
        onChange={(event) => setText(event.target.value)}
        onBlur={(event) => take(event.target)}
        onKeyDown={(event) => event.key === 'Enter' && take(event.currentTarget)}
      />
      {wrong === null ? null : (
        <span id={`${id}-error`} className={controls.error}>
          {wrong}
        </span>
      )}
    </div>
  );
}

/** Why what is typed is no day that can be kept; null where it is one. */
function problemOf({ valid, rangeUnderflow, rangeOverflow }: ValidityState): string | null {
  if (valid) return null;
  if (rangeUnderflow) return `This is before ${yearOf(EARLIEST)}. Look at the year again.`;
  if (rangeOverflow) return `This is after ${yearOf(LATEST)}. Look at the year again.`;
  return 'This is not a whole day. Type month, day and year.';
}

function yearOf(date: string): string {
  return date.slice(0, 4);
}
