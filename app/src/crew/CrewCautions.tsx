import { cautionCodes } from '@footmark/words';
import { TriangleAlert } from 'lucide-react';
import { Button, Dialog, DialogTrigger, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { Action } from '../controls/Action';
import { words } from '../words';
import dialogs from './dialog.module.css';
import marks from './stop.module.css';

/** The cautions in a line that is always there; a tap opens them all. */
export function CrewCautions() {
  const { label } = words.crew;
  return (
    <DialogTrigger>
      <Button className={marks.caution ?? ''}>
        <TriangleAlert size={24} aria-hidden />
        <span>{label('cautions-in-short')}</span>
      </Button>
      <ModalOverlay className={dialogs.over ?? ''} isDismissable>
        <Modal>
          <Dialog className={dialogs.dialog ?? ''}>
            {({ close }) => (
              <>
                <Heading slot="title">{label('before-you-dig')}</Heading>
                {cautionCodes.map((code) => {
                  const { title, text } = words.cautionText(code);
                  return (
                    <p key={code}>
                      <strong>{title}</strong> {text}
                    </p>
                  );
                })}
                <p>{words.modelValuesText()}</p>
                <Action look="primary" wide onPress={close}>
                  {label('done')}
                </Action>
              </>
            )}
          </Dialog>
        </Modal>
      </ModalOverlay>
    </DialogTrigger>
  );
}
