import { parseClockRange, type Reading } from '@footmark/site';
import { Input, Label, Text, TextField } from 'react-aria-components';
import controls from '../controls/controls.module.css';
import { useTypedText } from '../controls/useTypedText';
import { words } from '../words';
import { clockInputText, clockOf } from './readingFacts';

type Props = {
  readonly value: Reading['clock'];
  readonly onChange: (clock: Reading['clock']) => void;
};

/** Where on the wall, in hours of a clock face; taken over when the field is left or Enter is pressed. */
export function ClockField({ value, onChange }: Props) {
  const kept = clockInputText(value);
  const { text, setText, sends } = useTypedText(kept);
  const read = text.trim() === '' ? null : parseClockRange(text);
  const commit = () => {
    const next = read === null ? undefined : read.ok ? clockOf(read.value) : value;
    if (clockInputText(next) === kept) return;
    sends(clockInputText(next));
    onChange(next);
  };
  return (
    <TextField
      className={controls.field ?? ''}
      value={text}
      onChange={setText}
      onBlur={commit}
      isInvalid={read?.ok === false}
    >
      <Label className={controls.label ?? ''}>On the wall, o'clock</Label>
      <Input
        className={controls.input ?? ''}
        autoComplete="off"
        onKeyDown={(event) => event.key === 'Enter' && commit()}
      />
      {read?.ok === false ? (
        <Text slot="errorMessage" className={controls.error ?? ''}>
          {words.parseProblemText(read)}
        </Text>
      ) : null}
    </TextField>
  );
}
