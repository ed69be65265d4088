import type { ReactNode } from 'react';
import { ToggleButton } from 'react-aria-components';
import styles from './controls.module.css';

type Props = {
  readonly label: string;
  readonly isOn: boolean;
  readonly onPress: () => void;
  readonly children: ReactNode;
};

/** An icon button that stays pressed while what it does goes on. */
export function Toggle({ label, isOn, onPress, children }: Props) {
  return (
    <ToggleButton className={styles.toggle ?? ''} aria-label={label} isSelected={isOn} onChange={onPress}>
      {children}
    </ToggleButton>
  );
}
