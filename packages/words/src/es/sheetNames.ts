import type { ActionWord, ObservationKind } from '@footmark/site';
import type { SheetColumn, SheetFact, SheetHeading, SheetKind, SheetLegend } from '../sheetWords';

export const sheetTitles: Record<SheetKind, string> = {
  'mark-out': 'Marcas para excavar',
  reroute: 'Drenaje nuevo, para replantear',
  'as-built': 'Drenaje como se construyó',
  findings: 'Lo que encontró la cámara',
};

export const sheetHeadings: Record<SheetHeading, string> = {
  legend: 'Simbología',
  'key-plan': 'Plano índice',
  details: 'Detalles del plano',
  'before-digging': 'Antes de excavar',
  'one-call': 'Boleto de llamada única',
  marks: 'Marcas',
  profile: 'Perfil',
  'in-the-way': 'Lo que estorba',
  clearances: 'Más cerca de lo exigido',
  cautions: 'Precauciones',
  'set-out': 'Replanteo',
  materials: 'Materiales',
  drain: 'Drenaje nuevo',
  'as-built': 'Puntos del drenaje',
  'on-the-phone': 'En un teléfono',
  seen: 'Lo que se vio',
  'not-seen': 'Lo que no se vio, y por qué',
  advised: 'Lo que se recomienda',
  uncertain: 'Lo que sigue sin saberse',
};

export const sheetColumns: Record<SheetColumn, string> = {
  mark: 'Marca',
  seen: 'Qué se vio',
  station: 'Estación',
  depth: 'Profundidad al fondo',
  'tie-1': 'Cinta 1 desde',
  'tie-2': 'Cinta 2 desde',
  side: 'Lado, cruce',
  check: 'Comprobar desde',
  hole: 'Hoyo, a lo largo × a lo ancho',
  point: 'Punto',
  fitting: 'Qué hay ahí',
  'from-before': 'Desde el punto anterior',
  of: 'Qué',
  to: 'Cerca de',
  apart: 'A qué distancia',
  rule: 'Regla',
  amount: 'Cuánto',
  item: 'Concepto',
};

export const sheetLegends: Record<SheetLegend, string> = {
  'pipe-existing': 'Drenaje existente',
  'pipe-proposed': 'Drenaje propuesto',
  'pipe-as-built': 'Drenaje como se construyó',
  'mark-defect': 'Marca, algo está mal',
  'mark-landmark': 'Marca, accesorio o cambio',
  'search-zone': 'Dónde está, 95 de cada 100 veces',
  'not-seen': 'Ninguna cámara lo ha visto',
  'tie-point': 'Esquina desde donde se mide',
  station: 'Estación a lo largo del drenaje',
  'set-out': 'Punto que se replantea',
  'set-out-bend': 'Codo que se replantea',
  'drain-point': 'Punto del drenaje',
  'drain-bend': 'Codo del drenaje',
  excavation: 'Excavación planeada',
  'root-zone': 'Zona de raíces',
  'paint-beside': 'Pintada a un lado de su lugar',
  'by-eye': 'A trazos: puesto ahí a ojo',
};

export const sheetFacts: Record<SheetFact, string> = {
  'prepared-by': 'Preparado por',
  'prepared-for': 'Para',
  date: 'Fecha',
  scale: 'Escala',
  sheet: 'Hoja',
  units: 'Longitudes en',
};

/** What was seen, to people who do not lay drains. */
export const ownerSeenNames: Record<ObservationKind, string> = {
  roots: 'Raíces dentro de la tubería',
  'offset-joint': 'Dos tubos que ya no coinciden',
  crack: 'Una grieta en la tubería',
  break: 'Un pedazo roto de la tubería',
  collapse: 'La tubería se derrumbó',
  deformed: 'La tubería ya no es redonda',
  sag: 'Un tramo bajo donde se queda el agua',
  hole: 'Un agujero en la tubería',
  scale: 'Costra en la pared de la tubería',
  debris: 'Material suelto en la tubería',
  nest: 'Un nido en la tubería',
  infiltration: 'Entra agua del suelo',
  obstruction: 'Algo tapa la tubería',
  fitting: 'Una pieza de la tubería',
  connection: 'Se une otra tubería',
  'material-change': 'La tubería cambia de material',
  'water-level': 'Agua estancada',
  'end-of-run': 'Hasta donde llegó la cámara',
};

/** What is advised, to the owner. */
export const ownerActionNames: Record<ActionWord, string> = {
  watch: 'Volver a revisarlo dentro de un tiempo',
  'clean-and-look-again': 'Limpiar la tubería y volver a revisarla',
  'spot-repair': 'Reparar este lugar',
  line: 'Revestir la tubería por dentro',
  replace: 'Reemplazar la tubería aquí',
  reroute: 'Tender una tubería nueva por otro camino',
};
