/** Whether a value was read in its source, computed from it, remembered, or is a custom of the trade. */
export type Basis = 'read' | 'computed' | 'memory' | 'practice';

/** A limit or default with the place that it comes from. `value` in SI: metres, metres a second, radians, a pipe's fall over its run, or a plain number. */
export type SettingRow = {
  readonly value: number;
  readonly unit: 'm' | 'm/s' | 'rad' | 'fall' | '1';
  readonly title: string;
  readonly edition: string;
  readonly clause: string;
  readonly basis: Basis;
};

const FOOT_M = 0.3048;
const practice = { title: 'common practice, no source', edition: '', clause: '', basis: 'practice' } as const;

/** What a new site starts with and what the measuring mathematics warns by. Each row can be changed on a site or an input. */
export const settings = {
  tapeLength: { value: 100 * FOOT_M, unit: 'm', ...practice },
  tapeSigma: { value: 0.02, unit: 'm', ...practice },
  /** Share of a tape's length that a pull by hand may be off by. */
  tapeRelative: { value: 1 / 1000, unit: '1', ...practice },
  /** Standard deviation of a point that was put on the sketch by eye. */
  assumedPointSigma: { value: 0.3, unit: 'm', ...practice },
  entryReach: { value: 3 * FOOT_M, unit: 'm', ...practice },
  counterResolution: { value: 0.1 * FOOT_M, unit: 'm', ...practice },
  weakCutBelow: { value: Math.PI / 6, unit: 'rad', ...practice },
  weakCutAbove: { value: (5 * Math.PI) / 6, unit: 'rad', ...practice },
  /** Share of its perimeter by which an outline may fail to close before that is a warning. */
  misclosure: { value: 1 / 1000, unit: '1', ...practice },
  /** Control points less sure than this are no help on a yard. */
  controlAccuracy: { value: 10, unit: 'm', ...practice },
  /** A north from control points less sure than this (standard deviation) is a guess. */
  northSigma: { value: Math.PI / 180, unit: 'rad', ...practice },
  /** Control points further than this from the middle of them all belong to no yard. */
  controlReach: { value: 50_000, unit: 'm', ...practice },
  /** Paint that was set out further than this from where it would stand now was set out from other figures. */
  givenMoved: { value: 0.05, unit: 'm', ...practice },
  /** Two crews that laid one thing bare further apart than this, in plan or in depth, disagree. */
  findsApart: { value: FOOT_M / 2, unit: 'm', ...practice },
  /** Standard deviation, each axis, of a place that a crew measured off its paint: how it painted and how it measured. */
  paintOffsetSigma: { value: 0.05, unit: 'm', ...practice },
  drainDiameter: { value: 4 * 0.0254, unit: 'm', ...practice },
  bendRadius: {
    value: 9 * 0.0254,
    unit: 'm',
    title: 'ASTM A74',
    edition: '',
    clause: 'long sweep, 4 inch, centre line',
    basis: 'memory',
  },
} as const satisfies Record<string, SettingRow>;
