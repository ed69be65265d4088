import type { Services } from '@footmark/dig';
import { changeOneCall, type OneCall } from '@footmark/site';
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
  const ticket = site.digging.oneCall ?? NONE;
  const set = (facts: Parameters<typeof changeOneCall>[1]['facts']) =>
    edit('Keep the one-call ticket', (s) => changeOneCall(s, { facts }));
  const found = services.findings.find((f) => f.code.startsWith('one-call'));
  const said = found === undefined ? null : words.digFindingText(found, site);
  return (
    <Fold title="One-call ticket" result={words.oneCallText(services.oneCall, ticket)}>
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
