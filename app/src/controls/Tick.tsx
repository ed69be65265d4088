import { Check } from 'lucide-react';
import type { ReactNode } from 'react';
import { Checkbox } from 'react-aria-components';
import styles from './controls.module.css';

type Props = {
  readonly isSelected: boolean;
  readonly onChange: (isSelected: boolean) => void;
  readonly children: ReactNode;
};

/** Yes or no. */
export function Tick({ isSelected, onChange, children }: Props) {
  return (
    <Checkbox className={styles.check ?? ''} isSelected={isSelected} onChange={onChange}>
      <span className={styles.box} aria-hidden>
        {isSelected ? <Check size={20} strokeWidth={3} /> : null}
      </span>
      <span>{children}</span>
    </Checkbox>
  );
}
