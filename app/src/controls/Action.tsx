import type { ReactNode } from 'react';
import { Button, type ButtonProps } from 'react-aria-components';
import styles from './controls.module.css';

type Look = 'plain' | 'primary' | 'quiet' | 'danger' | 'icon';

const LOOKS: Record<Look, string | undefined> = {
  plain: styles.button,
  primary: styles.primary,
  quiet: styles.quiet,
  danger: styles.danger,
  icon: styles.icon,
};

type Props = Omit<ButtonProps, 'className' | 'children'> & {
  readonly look?: Look;
  readonly wide?: boolean;
  readonly children: ReactNode;
};

/** A button. `icon` buttons carry an aria-label. */
export function Action({ look = 'plain', wide = false, children, ...rest }: Props) {
  return (
    <Button {...rest} className={[LOOKS[look], wide ? styles.wide : ''].join(' ')}>
      {children}
    </Button>
  );
}
