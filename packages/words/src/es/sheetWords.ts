import { formatLength, type Units } from '@footmark/site';
import { lengthText } from '../measureText';
import { inSentence } from '../named';
import type { SheetWords } from '../sheetWords';
import { ownerWords } from './ownerWords';
import { sheetColumns, sheetFacts, sheetHeadings, sheetLegends, sheetTitles } from './sheetNames';

const unitNames: Record<Units['length'], string> = {
  'ft-in': 'pies y pulgadas',
  ft: 'pies',
  m: 'metros',
};

const sides = { left: 'izquierda', right: 'derecha' } as const;

/** Standard bends turn by angles with up to two decimals: 22.5°, 11.25°. */
function bendAngleText(turn: number): string {
  return `${Number(((Math.abs(turn) * 180) / Math.PI).toFixed(2))}°`;
}

/** What the sheet on paper says. */
export const sheetWords: SheetWords = {
  ...ownerWords,
  title: (kind) => sheetTitles[kind],
  heading: (heading) => sheetHeadings[heading],
  continued: (heading) => `${heading}, continuación`,
  column: (column) => sheetColumns[column],
  legend: (entry) => sheetLegends[entry],

  fact: (fact) => sheetFacts[fact],
  unnamed: () => 'Sitio sin nombre',
  sheetOf: (number, of) => `${number} de ${of}`,
  unitsText: ({ length }) => unitNames[length],
  scaleText: (denominator, feetToAnInch) =>
    feetToAnInch === null ? `1:${denominator}` : `1 in = ${feetToAnInch} ft`,
  noScale: () => '–',
  printActualSize: () => 'Imprima a tamaño real.',
  northText: (known) => (known ? 'Norte verdadero.' : 'El norte es supuesto.'),
  detailName: (letter) => `Detalle ${letter}`,
  detailText: (letter, scale) => `Detalle ${letter}, ${scale}`,
  matchText: (sheet) => `Línea de empalme, vea la hoja ${sheet}`,

  sideName: (side) => sides[side],
  tieNote: () =>
    'Cintas: enganche cada una en su punto, jálelas a nivel y pinte donde se encuentran. El lado es el de la marca, mirando desde el punto de la cinta 1 hacia el de la cinta 2; el cruce es el ángulo con que se encuentran. La cinta para comprobar tiene que dar lo que dice la tabla.',
  holeNote: () => 'El hoyo es el que encuentra la tubería 95 de cada 100 veces.',
  depthNote: (evenGround) =>
    evenGround
      ? 'Las profundidades son estimadas hasta que la tubería queda a la vista; donde faltan niveles, el terreno se toma como parejo.'
      : 'Las profundidades son estimadas hasta que la tubería queda a la vista.',
  stillStandsNote: () => 'Las cintas parten de cosas hechas para quedarse: vea si siguen ahí.',
  wasteNote: () =>
    'La tubería se mide a lo largo del drenaje, por sus codos. Agregue lo de cortes y desperdicio.',
  depthUnknown: () => 'no se conoce',
  noPlace: () => 'sin lugar en el plano',
  noTies: () => 'no hay dos puntos desde donde medir',
  underBuilding: (name) => `bajo ${name}`,
  paintBeside: (distance, units) => `Pintada a ${lengthText(distance, units)} de su lugar, vea el plano`,
  invertText: (level, { length }) =>
    `cota ${formatLength(level, length === 'm' ? 'm' : 'ft', { decimals: 2 })}`,
  exaggerationText: (factor) =>
    factor === 1
      ? 'Alturas a la misma escala que las longitudes.'
      : `Alturas a ${factor} veces la escala de las longitudes.`,
  pipeItem: (material, diameter) => `Tubería de ${diameter}, ${inSentence(material)}`,
  bendItem: (name, turn) =>
    name === null
      ? `Codo, ${bendAngleText(turn)}, no hay uno estándar`
      : `Codo ${name}, ${bendAngleText(turn)}`,
  cleanoutItem: () => 'Registro, con lo que lo sube hasta el terreno',
  ticketText: (ticket) => `Boleto de llamada única ${ticket}`,
  nothingFound: () =>
    'No se encontró nada que haya que resolver primero. Eso no es promesa de que no haya nada.',
  moreNear: (count) =>
    count === 1
      ? 'Aquí se deja fuera una más que queda más cerca de lo exigido. El plano en la aplicación la muestra.'
      : `Aquí se dejan fuera ${count} más que quedan más cerca de lo exigido. El plano en la aplicación las muestra.`,
  fewerNotes: (count) =>
    count === 1
      ? 'Aquí se deja fuera una nota que no urge.'
      : `Aquí se dejan fuera ${count} notas que no urgen.`,
};
