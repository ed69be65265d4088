import { X } from 'lucide-react';
import { Action } from '../controls/Action';
import { useDerived } from '../session/siteSession';
import styles from './cards.module.css';
import { FindingRow } from './FindingRow';

/** Everything that is wrong or doubtful, worst first. */
export function ChecksCard({ onClose }: { readonly onClose: () => void }) {
  const { findings } = useDerived();
  return (
    <section className={styles.card} aria-label="Checks">
      <div className={styles.head}>
        <h2>Checks</h2>
        <Action look="quiet" onPress={onClose}>
          <X size={20} aria-hidden /> Close
        </Action>
      </div>
      {findings.length === 0 ? (
        <p className={styles.empty}>Nothing here needs a second look.</p>
      ) : (
        findings.map((finding) => (
          <FindingRow key={finding.code + JSON.stringify(finding.at)} finding={finding} />
        ))
      )}
    </section>
  );
}
