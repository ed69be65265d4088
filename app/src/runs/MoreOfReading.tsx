import { ChevronDown } from 'lucide-react';
import type { ComponentProps } from 'react';
import { Button, Disclosure, DisclosurePanel } from 'react-aria-components';
import { ReadingDetails } from './ReadingDetails';
import styles from './runs.module.css';

/** The rest of what can be said of a reading; once opened it stays so for the next one. */
export function MoreOfReading(details: ComponentProps<typeof ReadingDetails>) {
  return (
    <Disclosure className={styles.more ?? ''}>
      <Button slot="trigger" className={styles.moreTrigger ?? ''}>
        More
        <ChevronDown size={20} aria-hidden />
      </Button>
      <DisclosurePanel>
        <div className={styles.morePanel}>
          <ReadingDetails {...details} />
        </div>
      </DisclosurePanel>
    </Disclosure>
  );
}
