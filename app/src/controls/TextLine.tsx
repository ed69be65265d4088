import { Input, Label, TextArea, TextField } from 'react-aria-components';
import styles from './controls.module.css';
import { useTypedText } from './useTypedText';

type Props = {
  readonly label: string;
  readonly value: string;
  /** Called when the person is done with the field and the text has changed. */
  readonly onCommit: (text: string) => void;
  readonly lines?: number;
  readonly maxLength?: number;
};

/** Free text. It is taken over when the field is left or Enter is pressed, so that one edit is one step of undo. */
export function TextLine({ label, value, onCommit, lines = 1, maxLength = 200 }: Props) {
  const { text, setText, sends } = useTypedText(value);
  const commit = () => {
    if (text === value) return;
    sends(text);
    onCommit(text);
  };
  return (
    <TextField
      className={styles.field ?? ''}
      value={text}
      onChange={setText}
      onBlur={commit}
      maxLength={maxLength}
    >
      <Label className={styles.label ?? ''}>{label}</Label>
      {lines > 1 ? (
        <TextArea className={styles.input ?? ''} rows={lines} />
      ) : (
        <Input className={styles.input ?? ''} onKeyDown={(event) => event.key === 'Enter' && commit()} />
      )}
    </TextField>
  );
}
