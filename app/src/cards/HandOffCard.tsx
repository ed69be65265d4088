import { siteFileName } from '@footmark/exchange';
import { proposedPaths, writeSite } from '@footmark/site';
import { cautionCodes } from '@footmark/words';
import { Download } from 'lucide-react';
import { Action } from '../controls/Action';
import { downloadMarks } from '../marks/marksTable';
import { useDerived, useSite } from '../session/siteSession';
import { downloadSetOut } from '../setOut/downloadSetOut';
import { markDownloaded } from '../storage/siteStore';
import { words } from '../words';
import styles from './cards.module.css';
import { downloadText } from './downloadText';

/** What leaves this device: files, and the cautions that go with them. */
export function HandOffCard() {
  const site = useSite();
  const derived = useDerived();
  return (
    <section className={styles.card} aria-label="Hand-off">
      <div className={styles.head}>
        <h2>Hand-off</h2>
      </div>
      <div className={styles.section}>
        <Action
          wide
          onPress={() => {
            downloadText(siteFileName(site, 'json'), writeSite(site), 'application/json');
            void markDownloaded(site.id).catch(() => {}); // a device that keeps nothing needs no reminder
          }}
        >
          <Download size={20} aria-hidden /> Download the site file
        </Action>
        <Action wide onPress={downloadMarks} isDisabled={derived.marks.length === 0}>
          <Download size={20} aria-hidden /> Download marks as CSV
        </Action>
        {proposedPaths(derived).length === 0 ? null : (
          <Action wide onPress={downloadSetOut}>
            <Download size={20} aria-hidden /> Download what sets new pipes out as CSV
          </Action>
        )}
        <p className={styles.empty}>
          The site file opens in Footmark on any other device. Nothing is sent anywhere.
        </p>
      </div>
      <div className={styles.section}>
        <h3>Before anyone digs</h3>
        {cautionCodes.map((code) => {
          const { title, text } = words.cautionText(code);
          return (
            <p key={code}>
              <strong>{title}</strong> {text}
            </p>
          );
        })}
      </div>
    </section>
  );
}
