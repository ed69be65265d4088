import type { OneCallState, ServiceFindingValues } from '@footmark/dig';
import type { OneCall } from '@footmark/site';
import type { Said } from '../said';
import { dateText } from './visitText';

/** How a ticket stands, as the findings about it are called. */
type TicketCode = Extract<keyof ServiceFindingValues, `one-call-${string}`>;
type TicketValues = ServiceFindingValues[TicketCode];

const CALL =
  'Llame al centro de llamada única (811 en los Estados Unidos), espere las marcas, y excave respetándolas.';

/** What is said of the one-call ticket. */
export const oneCallSentences: { readonly [Code in TicketCode]: (values: TicketValues) => Said } = {
  'one-call-missing': () => ({
    text: 'Aquí no hay ningún boleto de llamada única.',
    cure: `${CALL} Anote aquí el número del boleto.`,
  }),
  'one-call-not-called': ({ days }) => ({
    text:
      days === null
        ? 'No se sabe cuándo se llamó al centro de llamada única.'
        : 'Falta llamar al centro de llamada única.',
    cure: CALL,
  }),
  'one-call-waiting': ({ from }) => ({
    text:
      from === null
        ? 'Las marcas de llamada única todavía no están hechas.'
        : `El boleto vale desde el ${dateText(from)}.`,
    cure: 'Espere ese día, y las marcas.',
  }),
  'one-call-expired': ({ until }) => ({
    text: `Las marcas vencieron${until === null ? '' : ` el ${dateText(until)}`}.`,
    cure: 'No excave guiándose por ellas: llame de nuevo y espere marcas nuevas.',
  }),
  'one-call-dates-clash': () => ({
    text: 'Los días del boleto de llamada única se contradicen.',
    cure: 'Revise el boleto y corrija sus días.',
  }),
  'one-call-without-end': () => ({
    text: 'No se sabe hasta cuándo valen las marcas.',
    cure: 'Pregunte al centro de llamada única, y anote aquí el día.',
  }),
};

/** How it stands with the ticket, in a few words. */
export function oneCallText({ is, datesClash }: OneCallState, { validFrom, validUntil }: OneCall): string {
  switch (is) {
    case 'missing':
      return 'no hay ninguno';
    case 'not-called':
      return 'falta llamar';
    case 'waiting':
      return validFrom === undefined ? 'marcas todavía sin hacer' : `vale desde el ${dateText(validFrom)}`;
    case 'valid':
      if (datesClash) return 'sus días se contradicen';
      return validUntil === undefined
        ? 'vale, último día no conocido'
        : `vale hasta el ${dateText(validUntil)}`;
    case 'expired':
      return validUntil === undefined ? 'venció' : `venció el ${dateText(validUntil)}`;
  }
}
