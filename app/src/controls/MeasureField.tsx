import type { Parsed } from '@footmark/site';
import { type Ref as ReactRef, useState } from 'react';
import { Input, Label, Text, TextField } from 'react-aria-components';
import { words } from '../words';
import styles from './controls.module.css';
import { useTypedText } from './useTypedText';

type Props = {
  readonly label: string;
  /** The value in SI; undefined: not given. */
  readonly value: number | undefined;
  readonly parse: (text: string) => Parsed;
  /** Text that parses back to the value. */
  readonly print: (value: number) => string;
  /** Called with every text that is a value, and with undefined for an empty field that may be empty. */
  readonly onChange: (value: number | undefined) => void;
  readonly required?: boolean;
  /** Why a value that can be read is not taken; null where it is. */
  readonly check?: (value: number) => string | null;
  readonly hint?: string;
  readonly placeholder?: string;
  /** `leaving`: the value is taken over when the field is left or Enter is pressed; `typing`: with every key. */
  readonly when?: 'leaving' | 'typing';
  readonly onEnter?: () => void;
  readonly inputRef?: ReactRef<HTMLInputElement>;
  readonly inputId?: string;
  readonly autoFocus?: boolean;
};

/** A measurement, typed in any notation that the trade writes. What cannot be read says so below the field and changes nothing. */
export function MeasureField({
  label,
  value,
  parse,
  print,
  onChange,
  required = false,
  check = () => null,
  hint,
  placeholder,
  when = 'leaving',
  onEnter,
  inputRef,
  inputId,
  autoFocus = false,
}: Props) {
  const shown = value === undefined ? '' : print(value);
  const { text, setText, sends } = useTypedText(shown, (typed) => {
    const read = parse(typed);
    // a text that does not parse yet has no value: it is still being typed
    return read.ok ? read.value === value : value === undefined;
  });
  const [touched, setTouched] = useState(false);

  const parsed = text.trim() === '' ? null : parse(text);
  const problem =
    parsed === null
      ? required && touched
        ? 'This is needed.'
        : null
      : parsed.ok
        ? check(parsed.value)
        : words.parseProblemText(parsed);
  const hand = (next: number | undefined) => {
    sends(next === undefined ? '' : print(next));
    onChange(next);
  };
  const take = (latest: string) => {
    // what is shown is rounded: left as it is, it changes nothing
    if (latest === shown) return;
    const read = latest.trim() === '' ? null : parse(latest);
    if (read === null) {
      if (!required && value !== undefined) hand(undefined);
      else if (when === 'typing') hand(undefined);
    } else if (read.ok && check(read.value) === null) {
      if (read.value !== value) hand(read.value);
    } else if (when === 'typing') hand(undefined);
  };
  return (
    <TextField
      className={styles.field ?? ''}
      value={text}
      onChange={(next) => {
        setText(next);
        if (when === 'typing') take(next);
      }}
      onBlur={() => {
        setTouched(text.trim() !== '');
        take(text);
      }}
      isInvalid={problem !== null && (touched || when === 'leaving')}
      autoFocus={autoFocus}
    >
      <Label className={styles.label ?? ''}>{label}</Label>
      <Input
        ref={inputRef ?? null}
        {...(inputId === undefined ? {} : { id: inputId })}
        className={styles.input ?? ''}
        placeholder={placeholder ?? ''}
        autoComplete="off"
        onKeyDown={(event) => {
          if (event.key !== 'Enter') return;
          setTouched(true);
          take(text);
          if (onEnter) {
            event.preventDefault();
            onEnter();
          }
        }}
      />
      {problem !== null ? (
        <Text slot="errorMessage" className={styles.error ?? ''}>
          {problem}
        </Text>
      ) : hint !== undefined ? (
        <Text slot="description" className={styles.hint ?? ''}>
          {hint}
        </Text>
      ) : null}
    </TextField>
  );
}
