import type { Units } from '@footmark/site';
import { countText } from '../countText';
import type {
  IncomingFinding,
  IncomingNote,
  IncomingProblemCode,
  IncomingProblemFacts,
  IncomingQuestion,
  PlacingProblem,
} from '../incoming';
import { farTextIn, millionsText, valueText } from '../incomingFacts';
import type { Said } from '../said';
import { sureText } from './sureText';

type Values = IncomingProblemFacts['values'];

const farText = farTextIn(sureText, 'millas');

const ANOTHER_FILE = 'Elija otro archivo, o haga que lo escriban de nuevo.';
const A_PART = 'Tome solo la parte que rodea el sitio, y traiga esa.';

const problems: Record<IncomingProblemCode, (values: Values) => Said> = {
  'too-large': (values) => ({
    text: `El archivo es demasiado grande: ${millionsText(values, 'characters')} millones de caracteres, y el máximo es ${millionsText(values, 'most')}.`,
    cure: A_PART,
  }),
  'unknown-format': () => ({
    text: 'El archivo no es de ninguno de los tipos que se pueden traer.',
    cure: 'Elija un archivo GeoJSON, KML o DXF, o una tabla de puntos como texto.',
  }),
  'not-json': () => ({
    text: 'El archivo está dañado o cortado: no es JSON hasta su final.',
    cure: ANOTHER_FILE,
  }),
  'not-geojson': () => ({ text: 'El archivo es JSON, pero no GeoJSON.', cure: ANOTHER_FILE }),
  'not-xml': (values) => ({
    text: `El archivo está dañado o cortado: su XML se rompe en la línea ${valueText(values, 'line')}.`,
    cure: ANOTHER_FILE,
  }),
  'has-doctype': () => ({
    text: 'El archivo declara un tipo de documento propio, que puede hacer que un programa traiga otros archivos. No se leyó.',
    cure: 'Haga que lo escriban sin “DOCTYPE”; KML no lo necesita.',
  }),
  'not-kml': () => ({ text: 'El archivo es XML, pero no KML.', cure: ANOTHER_FILE }),
  'not-dxf': (values) => ({
    text: `El archivo está dañado, o no es DXF: la línea ${valueText(values, 'line')} no es la que tiene que estar ahí.`,
    cure: ANOTHER_FILE,
  }),
  'binary-dxf': () => ({ text: 'Este archivo DXF es binario.', cure: 'Guárdelo como DXF en texto (ASCII).' }),
  'cut-short': () => ({ text: 'El archivo termina antes de su final: se cortó.', cure: ANOTHER_FILE }),
  'too-deep': (values) => ({
    text: `Las cosas están unas dentro de otras en más de ${valueText(values, 'most')} niveles.`,
    cure: 'Haga que lo escriban sin grupos.',
  }),
  'too-many-things': (values) => ({
    text: `Trae más de ${valueText(values, 'most')} cosas.`,
    cure: A_PART,
  }),
  'too-many-points': (values) => ({
    text: `Trae más de ${valueText(values, 'most')} puntos.`,
    cure: A_PART,
  }),
  'nothing-in-it': () => ({
    text: 'No trae ningún punto, línea o contorno que se pueda leer.',
    cure: ANOTHER_FILE,
  }),
};

/** Why a file is not brought in, and what to do. */
export function incomingProblemText({ code, values }: IncomingProblemFacts): Said {
  return problems[code](values);
}

/** A count at the end agrees with one and with several. */
const notes: Record<IncomingNote['code'], (n: string) => string> = {
  'no-number': (n) => `Cosas con una coordenada que no es un número, que se dejaron fuera: ${n}.`,
  'too-few-points': (n) =>
    `Cosas con muy pocos puntos para una línea o un contorno, que se dejaron fuera: ${n}.`,
  'holes-left-out': (n) => `Huecos dentro de contornos, que se dejaron fuera: ${n}.`,
  'kinds-left-out': (n) => `Cosas que no son ni punto, ni línea, ni contorno, que se dejaron fuera: ${n}.`,
  'texts-left-out': (n) => `Textos y cotas que se dejaron fuera: ${n}.`,
  'links-left-out': (n) => `Enlaces a otros archivos e imágenes, que se dejaron fuera: ${n}.`,
  'paper-left-out': (n) => `Cosas en las hojas de papel del archivo, que se dejaron fuera: ${n}.`,
  'curves-as-chords': (n) => `Curvas que se tomaron como tramos rectos y cortos: ${n}.`,
  'rows-left-out': (n) => `Filas sin dos números donde van las coordenadas, que se dejaron fuera: ${n}.`,
};

/** What of a file is left out or made simpler. */
export function incomingNoteText({ code, count }: IncomingNote): string {
  return notes[code](countText(count));
}

const questions: Record<IncomingQuestion, string> = {
  coordinates: '¿Cuáles son sus coordenadas: las del propio plano, una cuadrícula, o latitud y longitud?',
  unit: '¿En qué se cuentan? En una cuadrícula los dos pies no son lo mismo.',
  order: '¿Qué columna es cuál: punto, norte, este, elevación, descripción?',
};

/** What a file does not say. */
export function incomingQuestionText(question: IncomingQuestion): string {
  return questions[question];
}

const placing: Record<PlacingProblem, Said> = {
  'questions-open': {
    text: 'El archivo no dice dónde está lo que trae.',
    cure: 'Responda lo que se pregunta arriba.',
  },
  'site-not-on-the-earth': {
    text: 'Este sitio todavía no tiene lugar en la Tierra, y el archivo no tiene otro.',
    cure: 'Dé primero a un punto del sitio su latitud y su longitud.',
  },
  'grid-not-read': {
    text: 'La definición de la cuadrícula no se puede leer.',
    cure: 'Elija la cuadrícula otra vez.',
  },
  'not-an-order': {
    text: 'Este orden no dice qué columna es la norte y cuál es la este.',
    cure: 'Nombre una columna N y otra E.',
  },
};

/** Why what came in has no place in this site. */
export function placingProblemText(problem: PlacingProblem): Said {
  return placing[problem];
}

/** What is to be known of where it lies. */
export function incomingFindingText(finding: IncomingFinding, units: Units): Said {
  switch (finding.code) {
    case 'too-far':
      return {
        text: `Queda a ${farText(finding.metres, units)} del sitio.`,
        cure: 'Compruebe el archivo, el sistema de coordenadas y los puntos de control del propio sitio.',
      };
    case 'far-away':
      return {
        text: `Queda a ${farText(finding.metres, units)} del sitio.`,
        cure: 'Tómelo solo si de verdad es así.',
      };
    case 'wrong-hemisphere':
      return {
        text: `Queda en el hemisferio equivocado: a ${farText(finding.metres, units)} del sitio. Con el otro signo en una latitud o una longitud quedaría cerca.`,
        cure: 'El oeste y el sur son negativos: haga que escriban el archivo de nuevo con los signos correctos.',
      };
    case 'order-swapped':
      return {
        text: `${finding.metres === null ? 'No queda en ningún lugar de la Tierra' : `Queda a ${farText(finding.metres, units)} del sitio`}. Con sus dos coordenadas al revés quedaría cerca.`,
        cure: 'Elija el otro orden.',
      };
    case 'unit-suspected':
      return {
        text: `Queda a ${farText(finding.metres, units)} del sitio. Con pies en lugar de metros, o metros en lugar de pies, quedaría cerca.`,
        cure: 'Elija la otra unidad.',
      };
    case 'larger-than-a-yard':
      return {
        text: `Ocupa ${farText(finding.metres, units)} de lado a lado, y ningún terreno de casa es tan grande.`,
        cure: 'Compruebe la unidad, y tome solo la parte que rodea el sitio.',
      };
    case 'smaller-than-a-yard':
      return {
        text: `Todo ello cabe en ${sureText(finding.metres, units)}.`,
        cure: 'Compruebe la unidad.',
      };
    case 'no-place':
      return {
        text: `Cosas que no tienen lugar en el mapa: ${countText(finding.count)}.`,
        cure: 'Compruebe el sistema de coordenadas y el orden de las coordenadas.',
      };
    case 'too-many-for-a-site':
      return {
        text: `Son ${countText(finding.count)} cosas, y el sitio tiene espacio para ${countText(finding.room)}.`,
        cure: 'Deje fuera algunos grupos.',
      };
    case 'too-many-corners':
      return {
        text: `Líneas con más de ${countText(finding.most)} esquinas, que se dejaron fuera: ${countText(finding.count)}.`,
        cure: 'Haga que las escriban con menos.',
      };
  }
}
