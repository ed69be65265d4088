import type { Finding } from '@footmark/site';
import { Button } from 'react-aria-components';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import styles from './cards.module.css';
import { showPlace } from './showPlace';

/** One finding: what is the matter, and the way out. A tap shows the place. */
export function FindingRow({ finding }: { readonly finding: Finding }) {
  const site = useSite();
  const { text, cure } = words.findingText(finding, site);
  return (
    <Button
      className={styles.finding ?? ''}
      data-severity={finding.severity}
      onPress={() => showPlace(finding.at)}
    >
      <strong>{text}</strong> {cure}
    </Button>
  );
}
