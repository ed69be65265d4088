import { type LinkChoice, leastChoice, linkBytes, linkText, type QrSymbol, qrSymbols } from '@footmark/link';
import { Copy, QrCode, Share } from 'lucide-react';
import { useState } from 'react';
import cards from '../cards/cards.module.css';
import { Fold } from '../cards/Fold';
import { Action } from '../controls/Action';
import { Tick } from '../controls/Tick';
import { useSite } from '../session/siteSession';
import { notify } from '../session/workbench';
import { words } from '../words';
import { canShareLinks, copyLink, shareLink } from './handOutLink';
import { linkHead } from './linkAddress';
import { QrDialog } from './QrDialog';

/** The whole sketch in an address, which no server sees, and as QR codes. */
export function LinkSection() {
  const site = useSite();
  const [choice, setChoice] = useState<LinkChoice>(leastChoice);
  const [symbols, setSymbols] = useState<readonly QrSymbol[] | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const choose = (change: Partial<LinkChoice>) => {
    setProblem(null);
    setChoice({ ...choice, ...change });
  };
  /** The link's bytes; null, and why is said, where it has none. */
  const made = (): Uint8Array | null => {
    const encoded = linkBytes(site, choice);
    if (encoded.ok) return encoded.bytes;
    setProblem(sentences(words.linkProblemText(encoded.failure)));
    return null;
  };
  const copy = async () => {
    const bytes = made();
    if (bytes === null) return;
    const copied = await copyLink(linkHead() + linkText(bytes));
    notify(
      copied
        ? 'The link is on the clipboard.'
        : 'This browser does not allow copying. Show the QR code instead.',
    );
  };
  const share = async () => {
    const bytes = made();
    if (bytes !== null) await shareLink(linkHead() + linkText(bytes), site.name);
  };
  const show = () => {
    const bytes = made();
    if (bytes === null) return;
    const drawn = qrSymbols(linkHead(), bytes);
    if (drawn.ok) setSymbols(drawn.symbols);
    else setProblem(sentences(words.linkProblemText(drawn.failure)));
  };
  return (
    <section className={cards.section} aria-label="Link for the crew">
      <h3>Link for the crew</h3>
      <p className={cards.empty}>
        The whole sketch is in the link itself: it opens in a browser, with nothing to install, and no server
        sees it. Photos stay here.
      </p>
      {canShareLinks() ? (
        <Action look="primary" wide onPress={() => void share()}>
          <Share size={20} aria-hidden /> Share the link
        </Action>
      ) : null}
      <Action wide look={canShareLinks() ? 'plain' : 'primary'} onPress={() => void copy()}>
        <Copy size={20} aria-hidden /> Copy the link
      </Action>
      <Action wide onPress={show}>
        <QrCode size={20} aria-hidden /> Show as a QR code
      </Action>
      {problem === null ? null : <p role="alert">{problem}</p>}
      <Fold title="What goes along" result={alongText(choice)}>
        <Tick isSelected={choice.address} onChange={(address) => choose({ address })}>
          The address
        </Tick>
        <Tick isSelected={choice.notes} onChange={(notes) => choose({ notes })}>
          Notes, and texts on the plan
        </Tick>
        <Tick isSelected={choice.coordinates} onChange={(coordinates) => choose({ coordinates })}>
          Where on the earth it is
        </Tick>
      </Fold>
      {symbols === null ? null : (
        <QrDialog symbols={symbols} title={site.name} onClose={() => setSymbols(null)} />
      )}
    </section>
  );
}

function alongText({ address, notes, coordinates }: LinkChoice): string {
  const more = [
    ...(address ? ['address'] : []),
    ...(notes ? ['notes'] : []),
    ...(coordinates ? ['place'] : []),
  ];
  return more.length === 0 ? 'the sketch alone' : `the sketch, ${more.join(', ')}`;
}

function sentences({ text, cure }: { readonly text: string; readonly cure: string }): string {
  return `${text} ${cure}`.trim();
}
