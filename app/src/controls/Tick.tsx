import { Check } from 'lucide-react';
import type { ReactNode } from 'react';
import { Checkbox } from 'react-aria-components';
import styles from './controls.module.css';

type Props = {
  readonly isSelected: boolean;
  readonly onChange: (isSelected: boolean) => void;
  readonly children: ReactNode;
  /** What it is called where its text alone would not tell. */
  readonly label?: string;
};

/** Yes or no. */
export function Tick({ isSelected, onChange, children, label }: Props) {
  return (
    <Checkbox
      className={styles.check ?? ''}
      isSelected={isSelected}
      onChange={onChange}
      {...(label === undefined ? {} : { 'aria-label': label })}
    >
      <span className={styles.box} aria-hidden>
        {isSelected ? <Check size={20} strokeWidth={3} /> : null}
      </span>
      <span>{children}</span>
    </Checkbox>
  );
}
