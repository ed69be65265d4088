import type { FindingCode } from '@footmark/site';
import type { Sentences } from '../findingSpeech';
import { DUG_STRAIGHT_M, type FoundWay, foundWays } from '../locateFacts';

type FoundCode = Extract<FindingCode, `as-found-${string}`>;

/** Where crews contradict the site or each other. */
export const foundSentences: Sentences<FoundCode> = {
  'as-found-mark-gone': ({ label, by }) => ({
    text: `${crewName(by)} informa sobre ${label}, que ya no está en este sitio o que ya no tiene lugar.`,
    cure: 'Vea qué se encontró ahí, y diga a qué pertenece.',
  }),
  'as-found-mark-moved': ({ label, by, moved }, { length }) => ({
    text: `${crewName(by)} pintó ${label} según otros datos: está a ${length(moved)} de donde se pintaría ahora.`,
    cure: 'Lo encontrado se cuenta desde la pintura tal como está. Donde todavía no se ha excavado, dé a la cuadrilla los datos nuevos.',
  }),
  'as-found-no-place': ({ label, by }) => ({
    text: `No se puede calcular dónde encontró ${crewName(by, 'middle')} ${nameOfFind(label)}: un punto desde el que se midió ya no está, o las cintas no se encuentran.`,
    cure: 'Pida las cintas de nuevo, y desde qué puntos se tomaron.',
  }),
  'as-found-outside': ({ label, by, along, across }, { length }) => ({
    text: `${crewName(by)} encontró ${label} fuera del hoyo que debía contenerla: ${offInText(along, across, length)}.`,
    cure: 'Una marca de cada veinte puede quedar tan lejos. Si hay más, compruebe el cero y la escala del recorrido, y la línea.',
  }),
  'as-found-disagree': ({ label, a, b, apart }, { length }) => ({
    text: `${label} se encontró en dos lugares, a ${length(apart)} uno de otro: uno según ${crewName(a, 'middle')} y otro según ${crewName(b, 'middle')}.`,
    cure: 'Pregunte quién de los dos midió desde la pintura, y quite la anotación equivocada.',
  }),
  'as-found-depths-disagree': ({ label, a, b, apart }, { length }) => ({
    text: `${label} se encontró a dos profundidades, con ${length(apart)} de diferencia: una según ${crewName(a, 'middle')} y otra según ${crewName(b, 'middle')}.`,
    cure: 'Pregunte desde qué terreno midieron, y quite la anotación equivocada.',
  }),
  'as-found-and-not-found': ({ label, a, b }) => ({
    text: `${crewName(a)} encontró ${label}, y ${crewName(b, 'middle')} no.`,
    cure: 'Pregunte si excavaron en el mismo lugar.',
  }),
};

const sides: Record<FoundWay['to'], string> = {
  downstream: 'con el flujo',
  upstream: 'contra el flujo',
  right: 'a la derecha',
  left: 'a la izquierda',
};

/** `3 ft contra el flujo y 0.5 ft a la derecha`. */
function offInText(along: number, across: number, length: (metres: number) => string): string {
  return foundWays({ along, across }, DUG_STRAIGHT_M)
    .map(({ metres, to }) => `${length(metres)} ${sides[to]}`)
    .join(' y ');
}

/** Who reports, as a sentence begins or in its middle. */
function crewName(by: string, where: 'start' | 'middle' = 'start'): string {
  if (by !== '') return by;
  return where === 'start' ? 'Una cuadrilla' : 'una cuadrilla';
}

function nameOfFind(label: string): string {
  return label === '' ? 'algo' : label;
}
