import type { GapEnd, SeverityWord, Site, StillThere, Units, Visit, VisitComparison } from '@footmark/site';
import { lengthText } from '../measureText';
import { atStart, inSentence } from '../named';
import { dayOf, severityOf, withinErrors } from '../visitFacts';
import { runEndNames, severityNames, visitPurposeNames } from './drainNames';
import { runInText } from './evidenceText';

/** Days of the calendar, which are the same day in every time zone. */
const day = new Intl.DateTimeFormat('es-US', {
  year: 'numeric',
  month: 'short',
  day: 'numeric',
  timeZone: 'UTC',
});

/** `9 mar 2025`, for a day written `2025-03-09`. */
export function dateText(date: string): string {
  return day.format(dayOf(date));
}

/** `9 mar 2025, primera revisión`; `Primera revisión, día no conocido` without its day. */
export function visitName({ date, purpose }: Visit): string {
  const name = visitPurposeNames[purpose];
  return date === undefined ? `${name}, día no conocido` : `${dateText(date)}, ${inSentence(name)}`;
}

/** What has become of things that two visits are compared by. */
export const comparedTexts: Record<keyof VisitComparison, { readonly title: string; readonly text: string }> =
  {
    gone: {
      title: 'Ya no está',
      text: 'Se vio antes; una cámara volvió a pasar por ahí y no estaba.',
    },
    appeared: { title: 'Nuevo', text: 'No estaba cuando una cámara pasó antes.' },
    stillThere: { title: 'Sigue ahí', text: 'Se vio en las dos visitas: la misma cosa en el mismo lugar.' },
    notLookedAtAgain: {
      title: 'No se volvió a revisar',
      text: 'Se vio antes, donde no es seguro que una cámara haya vuelto a pasar.',
    },
    firstLookedAt: {
      title: 'Revisado por primera vez',
      text: 'Se vio donde no es seguro que una cámara haya pasado antes.',
    },
  };

/** How a thing that is still there has fared: its severity, and how far apart the two visits have it. */
export function faredText(thing: StillThere, units: Units): string {
  const [was, is] = [severityOf(thing.before), severityOf(thing.after)];
  const apart = `${lengthText(Math.abs(thing.moved), units)} de diferencia según los contadores, ${
    withinErrors(thing) ? 'dentro de sus errores' : 'más de lo que sus errores explican'
  }`;
  if (was === is) return is === null ? apart : `gravedad ${severityText(is)} como antes; ${apart}`;
  return `gravedad ${severityText(was)} antes, ${severityText(is)} después; ${apart}`;
}

function severityText(severity: SeverityWord | null): string {
  return severity === null ? 'no indicada' : inSentence(severityNames[severity]);
}

/** Where a camera went no further, and why; null where it was not stopped. */
export function stoppedText(end: GapEnd, site: Site): string | null {
  if (end.is !== 'stopped') return null;
  const why = end.ended === null ? 'nadie dijo por qué' : inSentence(runEndNames[end.ended]);
  return `${atStart(runInText(end.run, site))} terminó en ${end.last.label}: ${why}.`;
}
