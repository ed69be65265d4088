import { siteFileName } from '@footmark/exchange';
import { writeSite } from '@footmark/site';
import { cautionCodes } from '@footmark/words';
import { Download } from 'lucide-react';
import { BringInFold } from '../bringIn/BringInFold';
import styles from '../cards/cards.module.css';
import { Action } from '../controls/Action';
import { CrewFoundSection } from '../crew/office/CrewFoundSection';
import { LinkSection } from '../link/LinkSection';
import { useSite } from '../session/siteSession';
import { SheetSection } from '../sheet/SheetSection';
import { words } from '../words';
import { FilesFold } from './files/FilesFold';
import { saveFile } from './saveFile';

/** What leaves this device: files, and the cautions that go with them. */
export function HandOffCard() {
  const site = useSite();
  const saveSite = () =>
    saveFile({ name: siteFileName(site, 'json'), data: writeSite(site), type: 'application/json' });
  return (
    <section className={styles.card} aria-label="Hand-off">
      <div className={styles.head}>
        <h2>Hand-off</h2>
      </div>
      <div className={styles.section}>
        <Action wide onPress={saveSite}>
          <Download size={20} aria-hidden /> Download the site file
        </Action>
        <p className={styles.empty}>
          The site file opens in Footmark on any other device. Nothing is sent anywhere.
        </p>
      </div>
      <SheetSection />
      <LinkSection />
      <FilesFold />
      <BringInFold />
      <CrewFoundSection />
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
