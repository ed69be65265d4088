import type { Tie, Ties } from '@footmark/site';
import { angleText, lengthText } from '@footmark/words';
import cards from '../cards/cards.module.css';
import { useSite } from '../session/siteSession';
import { words } from '../words';

/** The tapes to set a place out by, large enough to read at arm's length. */
export function TapesList({ ties }: { readonly ties: Ties }) {
  const site = useSite();
  return (
    <div>
      <TapeRow tie={ties.pair[0]} use="First tape" />
      <TapeRow tie={ties.pair[1]} use="Second tape" />
      {ties.check ? <TapeRow tie={ties.check} use="To check" /> : null}
      <p className={cards.sub}>
        The tapes cross at {angleText(ties.cutAngle)}, {words.sideText(ties, site)}.
      </p>
    </div>
  );
}

function TapeRow({ tie, use }: { readonly tie: Tie; readonly use: string }) {
  const site = useSite();
  return (
    <div className={cards.tape}>
      <b>{lengthText(tie.distance, site.units)}</b>
      <span>
        {use}
        <br />
        from {words.referenceName(tie.from, site)}
      </span>
    </div>
  );
}
