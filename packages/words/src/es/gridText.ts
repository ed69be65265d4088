import type { GridFactors, GridNote, GridSystem, GridUnit } from '@footmark/grid';
import type { DefinitionProblem } from '@footmark/site';
import { convergenceFacts, datumNames, factorText, groundFacts, metresText } from '../gridFacts';
import type { Said, WayRow } from '../said';

/** What grid coordinates are counted in, with which foot it is. */
export function gridUnitText({ name, metres }: GridUnit): string {
  switch (name) {
    case 'm':
      return 'metros';
    case 'ft':
      return 'pies internacionales (0.3048 m)';
    case 'us-ft':
      return 'pies topográficos de los Estados Unidos (1200/3937 m)';
    case 'other':
      return `unidades de ${metresText(metres)}`;
  }
}

/** A system with its zone, datum, unit and code. Zones keep the name that they are registered under. */
export function gridSystemText({ kind, name, datum, unit, epsg }: GridSystem): string {
  const family = { 'state-plane': 'Plano estatal, zona ', utm: 'UTM, zona ', typed: '' }[kind];
  return [
    `${family}${name}`,
    ...(datum === null ? [] : [datumNames[datum]]),
    gridUnitText(unit),
    ...(epsg === null ? [] : [`EPSG ${epsg}`]),
  ].join(', ');
}

/** The factors of a grid at a place, row by row. */
export function gridFactorRows(factors: GridFactors): readonly WayRow[] {
  const factor = (value: number | null) =>
    value === null ? 'no se conoce sin una altura' : factorText(value);
  return [
    { name: 'Convergencia', text: convergenceText(factors.convergence) },
    { name: 'Factor de escala de la cuadrícula', text: factor(factors.pointScale) },
    { name: 'Factor de elevación', text: factor(factors.elevationFactor) },
    { name: 'Factor combinado', text: factor(factors.combined) },
  ];
}

const sides = { east: 'este', west: 'oeste' } as const;

function convergenceText(convergence: number): string {
  const { text, side } = convergenceFacts(convergence);
  return side === null
    ? `${text}, el norte de cuadrícula es el norte verdadero`
    : `${text}, el norte de cuadrícula queda al ${sides[side]} del norte verdadero`;
}

/** What must be known beside coordinates in a grid. */
export function gridNoteText(note: GridNote): string {
  switch (note.code) {
    case 'datum-as-wgs84':
      return 'Las posiciones GPS (WGS 84) y el datum de la cuadrícula se toman por uno solo. En América del Norte hay de 1 a 2 m (3 a 7 ft) entre los dos: diga en qué datum está una posición, y compruebe en un punto conocido.';
    case 'datum-shifted':
      return 'El paso de WGS 84 al datum de la cuadrícula es el de la definición: solo es bueno dentro de algunos metros.';
    case 'outside-area':
      return 'El sitio queda fuera del área para la que es esta zona.';
    case 'not-conformal':
      return 'Esta proyección estira las longitudes de modo distinto en cada dirección: no tome distancias de sus coordenadas.';
    case 'north-not-known':
      return 'El norte no se midió en este sitio: sus coordenadas están giradas tanto como su norte esté equivocado.';
    case 'height-not-given':
      return 'Sin la altura del terreno no hay factor de elevación.';
    case 'ground-is-not-grid': {
      const { percent, inHundred, gridIs } = groundFacts(note.partsPerMillion);
      return `Una distancia en la cuadrícula es ${percent} más ${gridIs === 'shorter' ? 'corta' : 'larga'} que en el terreno, ${inHundred} en cada 100. Mida con cinta las distancias de la hoja, no las que hay entre coordenadas de la cuadrícula.`;
    }
  }
}

const definitionTexts: Record<DefinitionProblem, Said> = {
  'definition-too-long': {
    text: 'Esto es demasiado largo para la definición de un sistema de coordenadas.',
    cure: 'Pegue la cadena PROJ o el WKT de un solo sistema.',
  },
  'not-a-definition': {
    text: 'Esto no es una definición que se pueda leer.',
    cure: 'Pegue una cadena PROJ que empiece con “+proj=”, o WKT; un código solo no dice lo suficiente.',
  },
  'not-projected': {
    text: 'Este sistema tiene grados, no coordenadas este y norte.',
    cure: 'La latitud y la longitud se dan de todos modos; pegue la definición de un sistema proyectado.',
  },
  'needs-shift-grid': {
    text: 'Al datum de este sistema se llega por un archivo de correcciones que no está aquí.',
    cure: 'Pegue una definición con “+towgs84=”, o use una zona de NAD 83 o WGS 84.',
  },
  'datum-not-given': {
    text: 'Esta definición tiene un elipsoide antiguo y no dice cómo queda respecto a WGS 84: las posiciones podrían errar por cientos de pies.',
    cure: 'Agregue “+towgs84=” con los valores de su área, o use una zona de NAD 83 o WGS 84.',
  },
};

/** Why a typed definition cannot be used. */
export function definitionProblemText(problem: DefinitionProblem): Said {
  return definitionTexts[problem];
}
