import { type FoundState, type Units, WITHIN_95 } from '@footmark/site';
import type { CrewWords, PositionProblem } from '../crewWords';
import { foundLineIn } from '../foundLine';
import { lengthText } from '../measureText';
import { holeSizeText } from '../sureText';
import { answerProblemText } from './answerProblemText';
import { crewLabels } from './crewLabels';
import { dangerText } from './dangerText';
import { materialNames, observationNames } from './drainNames';
import { belowGroundText } from './heightText';
import { windText } from './locateText';
import { giveOrTakeText, sureText } from './sureText';
import { referenceInText } from './thingName';

/** Said of the mark, and of the pipe at it. */
const states: Readonly<Record<FoundState, string>> = {
  painted: 'Pintada',
  dug: 'Excavada',
  found: 'Encontrada',
  'not-found': 'No encontrada',
};

const ways = {
  downstream: 'Con el flujo',
  upstream: 'Contra el flujo',
  right: 'Derecha',
  left: 'Izquierda',
};

const depthTo = { top: 'hasta el lomo', invert: 'hasta el fondo' } as const;

const positionProblems: Readonly<Record<PositionProblem, string>> = {
  none: 'Este dispositivo no da su posición.',
  refused: 'Esta página no tiene permiso de conocer la posición. Permítalo en los ajustes del navegador.',
  unavailable: 'El dispositivo no encuentra aquí su posición. Aléjese de techos y árboles.',
  'too-slow':
    'El dispositivo no encontró su posición en un minuto. Salga a un lugar abierto e inténtelo de nuevo.',
};

/** What the crew view says in Spanish. */
export const crew: CrewWords = {
  languageName: 'Español',
  label: (label) => crewLabels[label],
  stateName: (state) => states[state],
  placeText: (index, count) => `${index + 1} de ${count}`,
  tapeFromText: (reference, site) => `desde ${referenceInText(reference, site)}`,
  depthText: (depth, units) =>
    depth === null
      ? 'No se conoce'
      : `${belowGroundText(depth.depth, units)} ${giveOrTakeText(WITHIN_95 * depth.sigma, units)}`,
  holeText: (hole, units) => (hole === null ? 'No se conoce' : holeSizeText(hole, units)),
  paintText: (distance, azimuth, units) =>
    `La pintura está a un lado: a ${lengthText(distance, units)} al ${windText(azimuth)}. Las cintas llegan a la pintura.`,
  dangerText,
  alongText,
  acrossText,
  wayText: (way) => ways[way],
  foundText: foundLineIn({
    states,
    byTapes: 'por cintas',
    atPaint: 'en la pintura',
    alongText,
    acrossText,
    depthText: (length, to) => `${length} ${depthTo[to]}`,
    observations: observationNames,
    materials: materialNames,
  }),
  whereAmIText: ({ distance, azimuth, accuracy }, label, units) =>
    `${label} está a ${sureText(distance, units)} al ${windText(azimuth)} de usted, ${giveOrTakeText(accuracy, units)}.`,
  positionProblemText: (why) => positionProblems[why],
  cameText: ({ marks, things }) =>
    `${count(marks, 'marca')} por encontrar, ${count(things, 'cosa')} en el plano`,
  codeText: (index, of) => `Código ${index} de ${of}`,
  answerText: ({ done, found, photos }) =>
    [count(done, 'marca'), count(found, 'anotación', 'anotaciones'), count(photos, 'foto')].join(', '),
  answerProblemText,
};

function count(n: number, one: string, several = `${one}s`): string {
  return `${n} ${n === 1 ? one : several}`;
}

function alongText(metres: number, units: Units): string {
  if (metres === 0) return 'En la pintura';
  return `${lengthText(Math.abs(metres), units)} ${metres > 0 ? 'con' : 'contra'} el flujo`;
}

function acrossText(metres: number, units: Units): string {
  if (metres === 0) return 'Sobre la línea';
  return `${lengthText(Math.abs(metres), units)} a la ${metres > 0 ? 'derecha' : 'izquierda'}`;
}
