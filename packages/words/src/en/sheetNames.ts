import type { ActionWord, ObservationKind } from '@footmark/site';
import type { SheetColumn, SheetFact, SheetHeading, SheetKind, SheetLegend } from '../sheetWords';

export const sheetTitles: Record<SheetKind, string> = {
  'mark-out': 'Mark-out for digging',
  reroute: 'New drain, to be set out',
  'as-built': 'Drain as built',
  findings: 'What the camera found',
};

export const sheetHeadings: Record<SheetHeading, string> = {
  legend: 'Legend',
  'key-plan': 'Key plan',
  details: 'Details of the plan',
  'before-digging': 'Before anyone digs',
  'one-call': 'One-call ticket',
  marks: 'Marks',
  profile: 'Profile',
  'in-the-way': 'What stands in the way',
  clearances: 'Nearer than asked',
  cautions: 'Cautions',
  'set-out': 'Setting out',
  materials: 'Materials',
  drain: 'New drain',
  'as-built': 'Points of the drain',
  'on-the-phone': 'On a phone',
  seen: 'What was seen',
  'not-seen': 'What was not seen, and why',
  advised: 'What is advised',
  uncertain: 'What stays uncertain',
};

export const sheetColumns: Record<SheetColumn, string> = {
  mark: 'Mark',
  seen: 'What was seen',
  station: 'Station',
  depth: 'Depth to invert',
  'tie-1': 'Tape 1 from',
  'tie-2': 'Tape 2 from',
  side: 'Side, cut',
  check: 'Check tape from',
  hole: 'Hole, along × across',
  point: 'Point',
  fitting: 'What is there',
  'from-before': 'From point before',
  of: 'What',
  to: 'Is near',
  apart: 'How near',
  rule: 'Rule',
  amount: 'How much',
  item: 'What',
};

export const sheetLegends: Record<SheetLegend, string> = {
  'pipe-existing': 'Drain, existing',
  'pipe-proposed': 'Drain, proposed',
  'pipe-as-built': 'Drain, as built',
  'mark-defect': 'Mark, something wrong',
  'mark-landmark': 'Mark, fitting or change',
  'search-zone': 'Where it is, 95 of 100 times',
  'not-seen': 'No camera has seen it',
  'tie-point': 'Corner to tape from',
  station: 'Station along the drain',
  'set-out': 'Point to set out',
  'set-out-bend': 'Bend to set out',
  'drain-point': 'Point of the drain',
  'drain-bend': 'Bend of the drain',
  excavation: 'Dig, planned',
  'root-zone': 'Root zone',
  'paint-beside': 'Painted beside its place',
  'by-eye': 'Dashed: put there by eye',
};

export const sheetFacts: Record<SheetFact, string> = {
  'prepared-by': 'Prepared by',
  'prepared-for': 'For',
  date: 'Date',
  scale: 'Scale',
  sheet: 'Sheet',
  units: 'Lengths in',
};

/** What was seen, to people who do not lay drains. */
export const ownerSeenNames: Record<ObservationKind, string> = {
  roots: 'Roots in the pipe',
  'offset-joint': 'Two lengths of pipe out of line',
  crack: 'A crack in the pipe',
  break: 'A broken piece of pipe',
  collapse: 'The pipe has fallen in',
  deformed: 'The pipe is out of round',
  sag: 'A low stretch where water stands',
  hole: 'A hole in the pipe',
  scale: 'Crust on the pipe’s wall',
  debris: 'Loose matter in the pipe',
  nest: 'A nest in the pipe',
  infiltration: 'Ground water leaks in',
  obstruction: 'Something blocks the pipe',
  fitting: 'A fitting',
  connection: 'Another pipe joins',
  'material-change': 'The pipe becomes another kind',
  'water-level': 'Standing water',
  'end-of-run': 'As far as the camera went',
};

/** What is advised, to the owner. */
export const ownerActionNames: Record<ActionWord, string> = {
  watch: 'Look at it again in a while',
  'clean-and-look-again': 'Clean the pipe, then look again',
  'spot-repair': 'Mend this place',
  line: 'Line the pipe from inside',
  replace: 'Replace the pipe here',
  reroute: 'Lay a new pipe another way',
};
