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
import { SendLink } from './SendLink';

/** The ways back to whoever gave the plan out. */
export function SendBack({ onClose }: { readonly onClose: () => void }) {
  const site = useSite();
  const answer = useCrewSession((s) => s.answer);
  const { label, answerText } = words.crew;
  if (answer === null) return null;
  const counts = countsOf(answer);
  const nothing = counts.done + counts.found === 0;
  // a link takes no photos: with them, the file is the way that loses nothing
  const hasPhotos = counts.photos > 0;
  const send = async () => {
    const sent = answerToSend();
    if (sent !== null) await handOver(await answerFiles(site, sent));
  };
  const byFile = (
    <Action wide look={hasPhotos ? 'primary' : 'plain'} isDisabled={nothing} onPress={() => void send()}>
      <Download size={24} aria-hidden /> {label('send-file')}
    </Action>
  );
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
          <p className={styles.counts}>{nothing ? label('nothing-to-send') : answerText(counts)}</p>
          <TextLine label={label('your-name')} value={answer.by} onCommit={nameCrew} />
          {hasPhotos ? byFile : null}
          {nothing ? null : <SendLink isFirst={!hasPhotos} />}
          {hasPhotos ? null : byFile}
          <p>{label('send-hint')}</p>
          <Action wide onPress={onClose}>
            {label('done')}
          </Action>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
