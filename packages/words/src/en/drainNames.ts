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
  roots: 'Roots',
  'offset-joint': 'Offset joint',
  crack: 'Crack',
  break: 'Break',
  collapse: 'Collapse',
  deformed: 'Deformed pipe',
  sag: 'Sag',
  hole: 'Hole',
  scale: 'Scale',
  debris: 'Debris',
  nest: 'Nest',
  infiltration: 'Infiltration',
  obstruction: 'Obstruction',
  fitting: 'Fitting',
  connection: 'Connection',
  'material-change': 'Material change',
  'water-level': 'Water level',
  'end-of-run': 'End of run',
};

export const materialNames: Record<PipeMaterial, string> = {
  unknown: 'Not known',
  clay: 'Clay',
  'cast-iron': 'Cast iron',
  plastic: 'Plastic',
  concrete: 'Concrete',
  'bituminised-fibre': 'Bituminised fibre',
  other: 'Other',
};

export const pathStateNames: Record<Path['state'], string> = {
  existing: 'Existing',
  proposed: 'Proposed',
  'as-built': 'As built',
};

export const directionNames: Record<RunDirection, string> = {
  'with-flow': 'With the flow',
  'against-flow': 'Against the flow',
};

/** Where the camera head was when the counter was zeroed. */
export const zeroNames: Record<ZeroKind, string> = {
  'in-pipe': 'Head in the pipe',
  rim: 'Head at the rim of the riser',
  'stack-base': 'Head at the base of the stack',
  point: 'Head in the pipe, at a known point',
};

/** How a point got its place. */
export const spotNames: Record<SpotKind, string> = {
  finger: 'Put there by eye',
  coordinates: 'Coordinates',
  tapes: 'Two tapes or more',
  offset: 'Offset from a line',
  bearing: 'Bearing and distance',
  between: 'Between two points',
  at: 'At another point',
  course: 'Direction and distance from the point before',
  turn: 'Turn and distance from the point before',
  arc: 'Curve from the point before',
};

export const findingSeverityNames: Record<Severity, string> = {
  error: 'Error',
  warning: 'Warning',
  note: 'Note',
};

/** How bad what was seen is. */
export const severityNames: Record<SeverityWord, string> = {
  slight: 'Slight',
  moderate: 'Moderate',
  severe: 'Severe',
};

/** What is advised to be done about it. */
export const actionNames: Record<ActionWord, string> = {
  watch: 'Watch',
  'clean-and-look-again': 'Clean and look again',
  'spot-repair': 'Spot repair',
  line: 'Line',
  replace: 'Replace',
  reroute: 'Reroute',
};

/** Why the camera went no further. */
export const runEndNames: Record<RunEnd, string> = {
  'reached-end': 'Reached the end',
  'could-not-pass': 'Could not pass',
  'cable-out': 'Cable all out',
  'under-water': 'Under water',
  'seen-enough': 'Seen enough',
  equipment: 'Camera failed',
};

export const visitPurposeNames: Record<VisitPurpose, string> = {
  'first-look': 'First look',
  'after-cleaning': 'After cleaning',
  'after-repair': 'After repair',
  other: 'Other',
};

export const headPartNames: Record<Head['zeroed'], string> = {
  lens: 'Lens',
  tail: 'Tail',
};
