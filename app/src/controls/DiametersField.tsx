import { lengthInputText, parseDiameter } from '@footmark/site';
import { Input, Label, Text, TextField } from 'react-aria-components';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import styles from './controls.module.css';
import { useTypedText } from './useTypedText';

type Props = {
  readonly label: string;
  readonly value: readonly number[] | undefined;
  readonly onChange: (value: readonly number[] | undefined) => void;
};

/** Diameters of the stems of one tree, typed with commas between them. */
export function DiametersField({ label, value, onChange }: Props) {
  const { units } = useSite();
  const textOf = (diameters: readonly number[]) =>
    diameters.map((d) => lengthInputText(d, units.diameter)).join(', ');
  const { text, setText, sends } = useTypedText(textOf(value ?? []));
  const read = text
    .split(/[,;]/)
    .filter((part) => part.trim() !== '')
    .map((part) => parseDiameter(part, units.diameter));
  const bad = read.find((one) => !one.ok);
  const commit = () => {
    if (bad !== undefined) return;
    const diameters = read.flatMap((one) => (one.ok ? [one.value] : []));
    if (String(diameters) === String(value ?? [])) return;
    const next = diameters.length < 2 ? undefined : diameters;
    sends(textOf(next ?? []));
    onChange(next);
  };
  return (
    <TextField
      className={styles.field ?? ''}
      value={text}
      onChange={setText}
      onBlur={commit}
      isInvalid={bad !== undefined}
    >
      <Label className={styles.label ?? ''}>{label}</Label>
      <Input
        className={styles.input ?? ''}
        placeholder={units.diameter === 'in' ? '8, 10, 12' : '200, 250, 300'}
        autoComplete="off"
        onKeyDown={(event) => event.key === 'Enter' && commit()}
      />
      {bad !== undefined && !bad.ok ? (
        <Text slot="errorMessage" className={styles.error ?? ''}>
          {words.parseProblemText(bad)}
        </Text>
      ) : null}
    </TextField>
  );
}
