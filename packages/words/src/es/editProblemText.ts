import type { EditProblem, Units } from '@footmark/site';
import { countText } from '../countText';
import {
  type EditList,
  type EditNames,
  type EditText,
  listName,
  numberName,
  textName,
  valueName,
} from '../editNames';
import { type EditNumber, limitText } from '../editNumbers';
import { fieldNames } from './fieldNames';
import { sigmaNames } from './sigmaNames';

/** What a number of a site is called in a sentence, by its property. */
const numberNames: Record<EditNumber, string> = {
  x: 'la distancia al origen',
  y: 'la distancia al origen',
  distance: 'la distancia',
  along: 'la distancia a lo largo de la línea',
  out: 'la distancia a escuadra desde la línea',
  fraction: 'la fracción del camino',
  value: 'el valor de una regla',
  footingDepth: 'la profundidad de una zapata',
  baseDiameter: 'un diámetro',
  bottomWidth: 'el ancho del fondo',
  shieldHeight: 'la altura de un escudo',
  radius: 'el radio',
  sweep: 'el ángulo de la curva',
  chord: 'la dirección de la cuerda',
  azimuth: 'la dirección',
  upAzimuth: 'la dirección',
  reading: 'la lectura de la brújula',
  turn: 'el giro',
  declination: 'la declinación',
  latitudeDeg: 'la latitud',
  longitudeDeg: 'la longitud',
  accuracy: 'la exactitud',
  metresPerPixel: 'la escala de la imagen, en metros por píxel,',
  widthPx: 'el ancho de la imagen, en píxeles,',
  heightPx: 'la altura de la imagen, en píxeles,',
  opacity: 'la opacidad',
  length: 'la longitud',
  sigma: 'el margen',
  entryReach: 'la distancia de una entrada a su tubería',
  bendRadius: 'el radio del codo',
  drop: 'la caída',
  bend: 'el giro del accesorio',
  from: 'el inicio del tramo',
  slope: 'la pendiente',
  riser: 'la profundidad del tubo vertical',
  sweepRadius: 'el radio de la curva',
  counter: 'el contador',
  to: 'el contador en el otro extremo',
  counted: 'la longitud contada',
  actual: 'la longitud real',
  water: 'la fracción de la tubería que está bajo el agua',
  videoAt: 'el tiempo en la grabación, en segundos,',
  newZero: 'el valor al que se puso el contador',
  number: 'el número de una lectura',
  scale: 'la longitud real por longitud contada',
  factor: 'la longitud real por longitud contada',
  resolution: 'el paso más pequeño del contador',
  right: 'la distancia hacia la derecha',
  flow: 'la dirección del flujo',
  // of things in the yard
  diameter: 'el diámetro',
  trunkDiameter: 'el diámetro del tronco',
  stemDiameters: 'el diámetro de un tronco',
  crownSpread: 'el ancho de la copa',
  height: 'la altura',
  depth: 'la profundidad',
  riserDepth: 'la profundidad del tubo vertical',
  invert: 'la cota de fondo',
  rimLevel: 'la cota del borde',
  floorLevel: 'el nivel del piso',
  level: 'el nivel',
};

/** What a site has several of, by the property that lists them. */
const lists: Readonly<Record<EditList, string>> = {
  features: 'cosas en el terreno',
  paths: 'tuberías',
  runs: 'recorridos',
  visits: 'visitas',
  underlays: 'imágenes',
  control: 'puntos de control',
  vertices: 'puntos en una línea o un contorno',
  stretches: 'tramos de una tubería',
  readings: 'lecturas en un recorrido',
  branches: 'ramales en un recorrido',
  tapes: 'cintas hasta un punto',
  pairs: 'parejas',
  different: 'lecturas distinguidas',
  knownLengths: 'longitudes conocidas de una tubería',
  setAside: 'observaciones dejadas a un lado',
  asFound: 'anotaciones de lo encontrado',
  photos: 'fotos de un hallazgo',
  ties: 'cintas hasta un punto',
  digs: 'excavaciones previstas',
  notes: 'notas',
  changed: 'reglas cambiadas',
  counters: 'lecturas corregidas',
  evidence: 'observaciones de un ajuste',
  drawn: 'puntos en una línea o un contorno',
  fitted: 'puntos en una línea o un contorno',
  added: 'puntos en una línea o un contorno',
  stemDiameters: 'troncos',
};

const texts: Readonly<Record<EditText, string>> = {
  name: 'un nombre',
  address: 'la dirección',
  note: 'una nota',
  letter: 'la letra de un recorrido',
  by: 'el nombre de quien lo encontró',
  label: 'lo que está pintado',
  ticket: 'el número del boleto',
  text: 'una nota',
  who: 'el nombre de quien cambió una regla',
  why: 'la razón del valor de una regla',
  observation: 'el nombre de una observación',
  setAside: 'el nombre de una observación',
};

const names: EditNames = {
  numbers: numberNames,
  texts,
  lists,
  fields: fieldNames,
  sigma: (name) => `el margen de “${sigmaNames[name]}”`,
  other: 'esto',
  others: 'de estos',
};

const limitWords = { zero: 'cero', miles: 'millas' } as const;

/** Why an edit was not made, with the limit that it would have passed, in the units of the site. */
export function editProblemText(problem: EditProblem, units: Units): string {
  return `No se hizo: ${reason(problem, units)}`;
}

function reason(problem: EditProblem, units: Units): string {
  switch (problem.code) {
    case 'too-great': {
      const limit = limitText(problem, units, limitWords);
      return `${numberName(problem, names)} ${problem.inclusive ? 'puede ser a lo más' : 'tiene que ser menor que'} ${limit}.`;
    }
    case 'too-small': {
      const limit = limitText(problem, units, limitWords);
      return `${numberName(problem, names)} tiene que ser ${problem.inclusive ? 'al menos' : 'mayor que'} ${limit}.`;
    }
    case 'too-many':
      return `puede haber a lo más ${countText(problem.limit)} ${listName(problem, names)}.`;
    case 'too-few':
      return `tiene que haber al menos ${countText(problem.limit)} ${listName(problem, names)}.`;
    case 'too-long':
      return `${textName(problem, names)} puede tener a lo más ${countText(problem.limit)} caracteres.`;
    case 'wrong-value':
      return `${valueName(problem, names)} no es un valor que un sitio pueda guardar.`;
    case 'depends-on-itself':
      return 'un punto se mediría entonces, por medio de otros, desde sí mismo. Mídalo desde otro punto.';
    case 'joins-itself':
      return 'una tubería se uniría entonces, por medio de otras, a sí misma. Termínela en otra tubería.';
    case 'stretches-out-of-order':
      return 'los tramos de una tubería empiezan en 0 y cada uno más adelante que el anterior.';
    case 'nothing-before':
      return 'un punto se mediría entonces desde puntos anteriores que no están.';
    case 'unknown-point':
    case 'unknown-path':
    case 'unknown-entry':
      return `algo nombraría entonces ${problem.name}, que no está.`;
    case 'unknown-visit':
      return `un recorrido sería entonces de la visita ${problem.name}, que no está.`;
    case 'unknown-reading':
      return 'algo nombraría entonces una lectura que no está.';
    case 'paired-with-itself':
      return 'una lectura formaría entonces pareja consigo misma. Elija una lectura de otro recorrido.';
    case 'length-to-itself':
      return 'una longitud de tubería empezaría y terminaría entonces en un mismo punto. Elija dos.';
    case 'dig-out-of-order':
      return 'una zanja terminaría entonces antes de empezar.';
    case 'duplicate-id':
      return `dos cosas tendrían entonces el id ${problem.name}.`;
  }
}
