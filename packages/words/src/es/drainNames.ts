import type {
  ActionWord,
  Head,
  ObservationKind,
  Path,
  PipeMaterial,
  RunEnd,
  SeverityWord,
  VisitPurpose,
} from '@footmark/site';
import type { RunDirection, Severity, SpotKind, ZeroKind } from '../codes';

export const observationNames: Record<ObservationKind, string> = {
  roots: 'Raíces',
  'offset-joint': 'Junta desplazada',
  crack: 'Grieta',
  break: 'Rotura',
  collapse: 'Colapso',
  deformed: 'Tubería deformada',
  sag: 'Hundimiento',
  hole: 'Agujero',
  scale: 'Incrustación',
  debris: 'Residuos',
  nest: 'Nido',
  infiltration: 'Infiltración',
  obstruction: 'Obstrucción',
  fitting: 'Accesorio',
  connection: 'Conexión',
  'material-change': 'Cambio de material',
  'water-level': 'Nivel de agua',
  'end-of-run': 'Fin del recorrido',
};

export const materialNames: Record<PipeMaterial, string> = {
  unknown: 'No se conoce',
  clay: 'Barro',
  'cast-iron': 'Hierro fundido',
  plastic: 'Plástico',
  concrete: 'Concreto',
  'bituminised-fibre': 'Fibra bituminosa',
  other: 'Otro',
};

export const pathStateNames: Record<Path['state'], string> = {
  existing: 'Existente',
  proposed: 'Propuesta',
  'as-built': 'Como se construyó',
};

export const directionNames: Record<RunDirection, string> = {
  'with-flow': 'Con el flujo',
  'against-flow': 'Contra el flujo',
};

/** Where the camera head was when the counter was zeroed. */
export const zeroNames: Record<ZeroKind, string> = {
  'in-pipe': 'Cabezal dentro de la tubería',
  rim: 'Cabezal en el borde del tubo vertical',
  'stack-base': 'Cabezal en la base de la bajante',
  point: 'Cabezal dentro de la tubería, en un punto conocido',
};

/** How a point got its place. */
export const spotNames: Record<SpotKind, string> = {
  finger: 'Puesto a ojo',
  coordinates: 'Coordenadas',
  tapes: 'Dos cintas o más',
  offset: 'A escuadra desde una línea',
  bearing: 'Rumbo y distancia',
  between: 'Entre dos puntos',
  at: 'En otro punto',
  course: 'Dirección y distancia desde el punto anterior',
  turn: 'Giro y distancia desde el punto anterior',
  arc: 'Curva desde el punto anterior',
};

export const findingSeverityNames: Record<Severity, string> = {
  error: 'Error',
  warning: 'Advertencia',
  note: 'Nota',
};

/** How bad what was seen is: said of `gravedad`. */
export const severityNames: Record<SeverityWord, string> = {
  slight: 'Leve',
  moderate: 'Moderada',
  severe: 'Grave',
};

/** What is advised to be done about it. */
export const actionNames: Record<ActionWord, string> = {
  watch: 'Vigilar',
  'clean-and-look-again': 'Limpiar y volver a revisar',
  'spot-repair': 'Reparar solo ese punto',
  line: 'Encamisar',
  replace: 'Reemplazar',
  reroute: 'Cambiar de ruta',
};

/** Why the camera went no further. */
export const runEndNames: Record<RunEnd, string> = {
  'reached-end': 'Llegó al final',
  'could-not-pass': 'No pudo pasar',
  'cable-out': 'Se acabó el cable',
  'under-water': 'Quedó bajo el agua',
  'seen-enough': 'Ya se vio lo suficiente',
  equipment: 'Falló la cámara',
};

export const visitPurposeNames: Record<VisitPurpose, string> = {
  'first-look': 'Primera revisión',
  'after-cleaning': 'Después de la limpieza',
  'after-repair': 'Después de la reparación',
  other: 'Otro motivo',
};

export const headPartNames: Record<Head['zeroed'], string> = {
  lens: 'Lente',
  tail: 'Cola',
};
