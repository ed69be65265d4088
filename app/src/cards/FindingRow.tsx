import type { Finding } from '@footmark/site';
import { Button } from 'react-aria-components';
import { useSite } from '../session/siteSession';
import { show } from '../session/workbench';
import { words } from '../words';
import styles from './cards.module.css';

/** One finding: what is the matter, and the way out. A tap shows the place. */
export function FindingRow({ finding }: { readonly finding: Finding }) {
  const site = useSite();
  const { text, cure } = words.findingText(finding, site);
  return (
    <Button
      className={styles.finding ?? ''}
      data-severity={finding.severity}
      onPress={() => show(finding.at)}
    >
      <strong>{text}</strong> {cure}
    </Button>
  );
}
