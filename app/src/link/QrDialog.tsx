import type { QrSymbol } from '@footmark/link';
import { useState } from 'react';
import { Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { Action } from '../controls/Action';
import { words } from '../words';
import styles from './link.module.css';
import { QrPicture } from './QrPicture';

/** QR symbols as large as the screen takes them, one after the other. */
export function QrDialog({
  symbols,
  title,
  onClose,
}: {
  readonly symbols: readonly QrSymbol[];
  readonly title: string;
  readonly onClose: () => void;
}) {
  const [index, setIndex] = useState(0);
  const { label, codeText } = words.crew;
  const symbol = symbols[index];
  const name = codeText(index + 1, symbols.length);
  return (
    <ModalOverlay
      className={styles.over ?? ''}
      isOpen
      isDismissable
      onOpenChange={(open) => open || onClose()}
    >
      <Modal>
        <Dialog className={styles.qr ?? ''}>
          <Heading slot="title">{title}</Heading>
          {symbol === undefined ? null : <QrPicture symbol={symbol} label={name} />}
          {symbols.length < 2 ? null : (
            <div className={styles.turn}>
              <Action isDisabled={index === 0} onPress={() => setIndex(index - 1)}>
                {label('code-before')}
              </Action>
              <strong>{name}</strong>
              <Action
                look="primary"
                isDisabled={index === symbols.length - 1}
                onPress={() => setIndex(index + 1)}
              >
                {label('next-code')}
              </Action>
            </div>
          )}
          <p>{label('hold-code')}</p>
          <Action wide onPress={onClose}>
            {label('done')}
          </Action>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
