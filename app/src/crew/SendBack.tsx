import { Download } from 'lucide-react';
import { Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { Action } from '../controls/Action';
import { TextLine } from '../controls/TextLine';
import { handOver } from '../handOff/saveFile';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import { countsOf } from './answerEdits';
import { answerFiles } from './answerFiles';
import { answerToSend, nameCrew, useCrewSession } from './crewSession';
import styles from './dialog.module.css';

/** The ways back to whoever gave the plan out. */
export function SendBack({ onClose }: { readonly onClose: () => void }) {
  const site = useSite();
  const answer = useCrewSession((s) => s.answer);
  const { label, answerText } = words.crew;
  if (answer === null) return null;
  const counts = countsOf(answer);
  const send = async () => {
    const sent = answerToSend();
    if (sent !== null) await handOver(await answerFiles(site, sent));
  };
  return (
    <ModalOverlay
      className={styles.over ?? ''}
      isOpen
      isDismissable
      onOpenChange={(open) => open || onClose()}
    >
      <Modal>
        <Dialog className={styles.dialog ?? ''}>
          <Heading slot="title">{label('send-back')}</Heading>
          <p className={styles.counts}>
            {counts.done + counts.found === 0 ? label('nothing-to-send') : answerText(counts)}
          </p>
          <TextLine label={label('your-name')} value={answer.by} onCommit={nameCrew} />
          <Action
            look="primary"
            wide
            isDisabled={counts.done + counts.found === 0}
            onPress={() => void send()}
          >
            <Download size={24} aria-hidden /> {label('send-file')}
          </Action>
          <p>{label('send-hint')}</p>
          <Action wide onPress={onClose}>
            {label('done')}
          </Action>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
