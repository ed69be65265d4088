import { ChevronDown } from 'lucide-react';
import type { ReactNode } from 'react';
import { Button, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import styles from './Fold.module.css';

type Props = {
  readonly title: string;
  /** What is inside comes to, so that it need not be opened. */
  readonly result?: string | undefined;
  readonly children: ReactNode;
  readonly isOpen?: boolean;
};

/** A part of a card that opens when it is wanted. */
export function Fold({ title, result, children, isOpen = false }: Props) {
  return (
    <Disclosure className={styles.fold ?? ''} defaultExpanded={isOpen}>
      <Heading className={styles.heading ?? ''} level={3}>
        <Button slot="trigger" className={styles.trigger ?? ''}>
          {result === undefined ? (
            title
          ) : (
            <span className={styles.told}>
              {title}: <span className={styles.result}>{result}</span>
            </span>
          )}
          <ChevronDown size={20} aria-hidden />
        </Button>
      </Heading>
      <DisclosurePanel>
        <div className={styles.inside}>{children}</div>
      </DisclosurePanel>
    </Disclosure>
  );
}
