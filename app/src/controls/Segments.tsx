import { Label, Radio, RadioGroup } from 'react-aria-components';
import type { Option } from './Choice';
import styles from './controls.module.css';

type Props<Id extends string> = {
  readonly label: string;
  readonly options: readonly Option<Id>[];
  readonly value: Id;
  readonly onChange: (value: Id) => void;
};

/** One of a few, all in sight. */
export function Segments<Id extends string>({ label, options, value, onChange }: Props<Id>) {
  return (
    <RadioGroup
      className={styles.field ?? ''}
      value={value}
      onChange={(key) => {
        const found = options.find((option) => option.id === key);
        if (found !== undefined) onChange(found.id);
      }}
      orientation="horizontal"
    >
      <Label className={styles.label ?? ''}>{label}</Label>
      <div className={styles.segments}>
        {options.map((option) => (
          <Radio key={option.id} value={option.id} className={styles.segment ?? ''}>
            {option.name}
          </Radio>
        ))}
      </div>
    </RadioGroup>
  );
}
