import { answerBytes, linkText, type QrSymbol, qrSymbols } from '@footmark/link';
import { Copy, QrCode, Share } from 'lucide-react';
import { useState } from 'react';
import { Action } from '../controls/Action';
import { canShareLinks, copyLink, shareLink } from '../link/handOutLink';
import { linkHead } from '../link/linkAddress';
import { QrDialog } from '../link/QrDialog';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import { answerToSend } from './crewSession';

/** An answer goes back as a link, or as a QR code from screen to screen; `isFirst`: it is what a crew most likely wants. */
export function SendLink({ isFirst }: { readonly isFirst: boolean }) {
  const look = isFirst ? 'primary' : 'plain';
  const site = useSite();
  const [symbols, setSymbols] = useState<readonly QrSymbol[] | null>(null);
  const [said, setSaid] = useState<string | null>(null);
  const { label } = words.crew;
  const made = (): Uint8Array | null => {
    const answer = answerToSend();
    if (answer === null) return null;
    const encoded = answerBytes(answer);
    if (encoded.ok) return encoded.bytes;
    setSaid(words.linkProblemText(encoded.failure).text);
    return null;
  };
  const link = () => {
    const bytes = made();
    return bytes === null ? null : linkHead() + linkText(bytes);
  };
  const share = async () => {
    const url = link();
    if (url !== null) await shareLink(url, site.name);
  };
  const copy = async () => {
    const url = link();
    if (url !== null && (await copyLink(url))) setSaid(label('copied'));
  };
  const show = () => {
    const bytes = made();
    const drawn = bytes === null ? null : qrSymbols(linkHead(), bytes);
    if (drawn?.ok) setSymbols(drawn.symbols);
    else if (drawn !== null) setSaid(words.linkProblemText(drawn.failure).text);
  };
  return (
    <>
      {canShareLinks() ? (
        <Action look={look} wide onPress={() => void share()}>
          <Share size={24} aria-hidden /> {label('send-link')}
        </Action>
      ) : (
        <Action look={look} wide onPress={() => void copy()}>
          <Copy size={24} aria-hidden /> {label('copy-link')}
        </Action>
      )}
      <Action wide onPress={show}>
        <QrCode size={24} aria-hidden /> {label('show-code')}
      </Action>
      {said === null ? null : <p role="status">{said}</p>}
      <p>{label('photos-stay')}</p>
      {symbols === null ? null : (
        <QrDialog symbols={symbols} title={label('send-back')} onClose={() => setSymbols(null)} />
      )}
    </>
  );
}
