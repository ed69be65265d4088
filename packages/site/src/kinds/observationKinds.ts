/** Whether what the camera saw is something wrong with the pipe, or something that belongs there. */
export type ObservationGroup = 'defect' | 'landmark';

export type ObservationSpec = {
  readonly group: ObservationGroup;
  /** Name of a mark symbol in the drawing package. */
  readonly symbol: 'mark-defect' | 'mark-landmark';
};

const defect = { group: 'defect', symbol: 'mark-defect' } as const;
const landmark = { group: 'landmark', symbol: 'mark-landmark' } as const;

/**
 * What a reading can say was seen, in plain trade words (common practice, no source; no coding scheme).
 * A new one is one entry here and its name in each language's folder.
 */
export const observationKinds = {
  roots: defect,
  'offset-joint': defect,
  crack: defect,
  break: defect,
  collapse: defect,
  deformed: defect,
  sag: defect,
  hole: defect,
  scale: defect,
  debris: defect,
  nest: defect,
  infiltration: defect,
  obstruction: defect,
  fitting: landmark,
  connection: landmark,
  'material-change': landmark,
  'water-level': landmark,
  'end-of-run': landmark,
} as const satisfies Record<string, ObservationSpec>;

export type ObservationKind = keyof typeof observationKinds;

export const observationKindIds = Object.keys(observationKinds) as unknown as readonly [
  ObservationKind,
  ...ObservationKind[],
]; // keys of a const table that is not empty
