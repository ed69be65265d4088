import { Camera, Trash2, X } from 'lucide-react';
import { useState } from 'react';
import { Button, Dialog, DialogTrigger, Heading, Modal, ModalOverlay } from 'react-aria-components';
import cards from '../cards/cards.module.css';
import { Action } from '../controls/Action';
import { currentSite, useSiteSession } from '../session/siteSession';
import { keepPicture } from './addPicture';
import { FilePick } from './FilePick';
import { importPicture, PHOTO_LONGEST_PX } from './importPicture';
import { importProblemText } from './importText';
import styles from './pictures.module.css';
import { useFileUrl } from './useFileUrl';

type Props = {
  readonly label: string;
  /** The photo's id in the device's store. */
  readonly value: string | undefined;
  readonly onChange: (file: string | undefined) => void;
};

/** A photo that stays on the device: taken or chosen, seen small, opened large, removed. */
export function PhotoField({ label, value, onChange }: Props) {
  const [busy, setBusy] = useState(false);
  const [problem, setProblem] = useState<string | null>(null);
  const take = async (file: File) => {
    const site = currentSite().id;
    setBusy(true);
    setProblem(null);
    const photo = await importPicture(file, PHOTO_LONGEST_PX);
    setBusy(false);
    if (!photo.ok) {
      setProblem(importProblemText(file.name, photo));
      return;
    }
    const kept = await keepPicture(file.name, photo, site);
    if (useSiteSession.getState().site?.id !== site) return; // the site was left while the photo was read
    if (kept === null)
      setProblem(`This device has no room left for “${file.name}”. Free some space and try again.`);
    else onChange(kept);
  };
  return (
    <fieldset className={styles.photo}>
      <legend>{label}</legend>
      {value === undefined ? null : <Photo file={value} label={label} />}
      {problem === null ? null : (
        <p className={cards.problem} role="alert">
          {problem}
        </p>
      )}
      <div className={cards.actions}>
        <FilePick onFile={(file) => void take(file)} isDisabled={busy}>
          <Camera size={20} aria-hidden />
          {busy ? 'Reading the photo' : value === undefined ? 'Take or choose a photo' : 'Another photo'}
        </FilePick>
        {value === undefined ? null : (
          <Action look="quiet" onPress={() => onChange(undefined)}>
            <Trash2 size={20} aria-hidden /> Remove
          </Action>
        )}
      </div>
    </fieldset>
  );
}

/** The stored photo, small; a press opens it large. */
function Photo({ file, label }: { readonly file: string; readonly label: string }) {
  const url = useFileUrl(file);
  if (url === 'coming') return null;
  if (url === 'missing') {
    return (
      <p className={cards.empty}>
        This photo is not on this device: a site file does not carry photos. Take or choose it again.
      </p>
    );
  }
  return (
    <DialogTrigger>
      <Button className={styles.thumbnail ?? ''} aria-label={`Open the ${label.toLowerCase()} large`}>
        <img src={url.href} alt="" />
      </Button>
      <ModalOverlay className={styles.overlay ?? ''} isDismissable>
        <Modal className={styles.modal ?? ''}>
          <Dialog className={styles.dialog ?? ''}>
            {({ close }) => (
              <>
                <div className={styles.dialogHead}>
                  <Heading slot="title">{label}</Heading>
                  <Action look="icon" aria-label="Close" onPress={close} autoFocus>
                    <X size={22} aria-hidden />
                  </Action>
                </div>
                <img src={url.href} alt={label} />
              </>
            )}
          </Dialog>
        </Modal>
      </ModalOverlay>
    </DialogTrigger>
  );
}
