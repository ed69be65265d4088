import { oneCallState } from '@footmark/dig';
import type { OneCall } from '@footmark/site';
import { cautionCodes } from '@footmark/words';
import { TriangleAlert } from 'lucide-react';
import { Button, Dialog, DialogTrigger, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { Action } from '../controls/Action';
import { useSite } from '../session/siteSession';
import { today } from '../session/today';
import { words } from '../words';
import dialogs from './dialog.module.css';
import marks from './stop.module.css';

const NONE: OneCall = { ticket: '' };

/** The cautions and how it stands with the one-call ticket today, always there; a tap opens all cautions. */
export function CrewCautions() {
  const { digging } = useSite();
  const { label } = words.crew;
  const oneCall = digging.oneCall ?? NONE;
  const state = oneCallState(oneCall, today());
  const ticket =
    oneCall.ticket === '' ? words.sheet.heading('one-call') : words.sheet.ticketText(oneCall.ticket);
  return (
    <DialogTrigger>
      <Button className={marks.caution ?? ''}>
        <TriangleAlert size={24} aria-hidden />
        <span>
          {label('cautions-in-short')}{' '}
          <strong>
            {ticket}: {words.oneCallText(state, oneCall)}.
          </strong>
        </span>
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
