import { quotedCell } from '../quotedCell';
import type { TableProblemCode, TableProblemFacts } from '../tableProblem';
import { parseProblemText } from './parseProblemText';

const sentences: Record<TableProblemCode, (there: string, because: string) => string> = {
  'text-too-long': () => 'Es demasiado texto para lecturas. Pegue una parte.',
  'no-rows': () => 'No contiene filas. Copie las celdas de la tabla y péguelas aquí.',
  'no-counter-column': () =>
    'Ninguna columna tiene lo que marcaba el contador. Ponga arriba una fila de encabezados, con “Counter” sobre esa columna.',
  'two-counter-columns': () =>
    'Dos columnas podrían ser el contador. Ponga arriba una fila de encabezados, con “Counter” sobre la correcta.',
  'too-many-rows': () => 'Un recorrido no admite más lecturas: esta fila y las de abajo se omiten.',
  'above-header': (there) => `Está encima de los encabezados: ${there}.`,
  'total-row': (there) => `Es un total, no una lectura: ${there}.`,
  'counter-missing': (there) => `No hay contador junto a ${there}. Escriba lo que marcaba el contador.`,
  'not-a-length': (there, because) => because || `${there} no es una longitud que se pueda leer.`,
  'counter-too-large': (there) => `${there} es más de lo que un contador puede marcar.`,
  'number-cut-by-comma': (there) =>
    `Una coma corta el número en ${there}. Escriba los números con punto, o copie las celdas mismas.`,
  'too-many-cells': (there) => `Hay más celdas que encabezados, así que no se sabe cuál es cuál: ${there}.`,
  'cell-too-long': (there) => `Una celda es demasiado larga: ${there}.`,
  'to-before-from': (there) =>
    `Sigue hasta ${there}, que está antes de donde empieza. Solo se toma su inicio.`,
  'unknown-thing-seen': (there) => `${there} no es ninguna de las cosas que una lectura puede haber visto.`,
  'seen-missing': () => 'No dice qué se vio.',
  'clock-not-read': (there, because) =>
    `${because || `${there} no está en la carátula del reloj.`} Va a la nota.`,
  'passed-not-read': (there) => `${there} no dice si la cámara pasó o no pudo pasar.`,
  'video-time-not-read': (there) => `${there} no es un tiempo de un video; escríbalo como 12:34.`,
};

/** Why pasted readings, a row or a cell of them cannot be taken over, and what to do about it. */
export function tableProblemText({ code, text, because }: TableProblemFacts): string {
  return sentences[code](quotedCell(text), because === undefined ? '' : parseProblemText(because));
}
