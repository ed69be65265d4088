import type { Services } from '@footmark/dig';
import { type OneCall, setOneCall } from '@footmark/site';
import cards from '../cards/cards.module.css';
import { Fold } from '../cards/Fold';
import { DateField } from '../controls/DateField';
import { TextLine } from '../controls/TextLine';
import { edit, useSite } from '../session/siteSession';
import { words } from '../words';

const NONE: OneCall = { ticket: '' };

/** The ticket of the one-call centre, and the days on which its marks are good. */
export function OneCallFold({ services }: { readonly services: Services }) {
  const site = useSite();
  const { digging } = site;
  const ticket = digging.oneCall ?? NONE;
  const set = (facts: { readonly [Fact in keyof OneCall]?: OneCall[Fact] | undefined }) => {
    const { ticket: number = '', called, validFrom, validUntil } = { ...ticket, ...facts };
    const oneCall: OneCall = {
      ticket: number,
      ...(called === undefined ? {} : { called }),
      ...(validFrom === undefined ? {} : { validFrom }),
      ...(validUntil === undefined ? {} : { validUntil }),
    };
    const empty = Object.values(oneCall).every((value) => value === '');
    edit('Keep the one-call ticket', (s) => setOneCall(s, { oneCall: empty ? undefined : oneCall }));
  };
  const found = services.findings.find((f) => f.code.startsWith('one-call'));
  const said = found === undefined ? null : words.digFindingText(found, site);
  return (
    <Fold title="One-call ticket" isOpen={said !== null}>
      {said === null ? null : (
        <p className={cards.caution}>
          <strong>{said.text}</strong> {said.cure}
        </p>
      )}
      <div className={cards.pair}>
        <TextLine label="Ticket number" value={ticket.ticket} onCommit={(text) => set({ ticket: text })} />
        <DateField label="Called on" value={ticket.called} onChange={(called) => set({ called })} />
      </div>
      <div className={cards.pair}>
        <DateField label="Good from" value={ticket.validFrom} onChange={(validFrom) => set({ validFrom })} />
        <DateField
          label="Good until"
          value={ticket.validUntil}
          onChange={(validUntil) => set({ validUntil })}
        />
      </div>
    </Fold>
  );
}
