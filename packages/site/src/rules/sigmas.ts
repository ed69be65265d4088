import type { SettingRow } from './settings';

/** Of a normal error, 95 % lies within this many standard deviations on either side. */
export const WITHIN_95 = 1.96;

const practice = { title: 'common practice, no source', edition: '', clause: '', basis: 'practice' } as const;
const pas128 = {
  title: 'PAS 128',
  edition: '2014',
  clause: 'Table 1, plus or minus taken as 95 % of one axis',
  basis: 'memory',
} as const;

/**
 * How sure each kind of measurement is, as one standard deviation, while nobody has said better. A site may have its own
 * value for each.
 */
export const sigmas = {
  /** Of one look at the counter: its step, slack in the cable, and which part of the thing was in view. */
  counter: { value: 0.03, unit: 'm', ...practice },
  /** Of the counter's zero: where the head stood. */
  zero: { value: 0.05, unit: 'm', ...practice },
  /** Of a counter's scale that nobody has checked, as a share. */
  scale: { value: 0.01, unit: '1', ...practice },
  /** Of the cable in a riser and its sweep. */
  riser: { value: 0.05, unit: 'm', ...practice },
  /** Of a pipe's point that was drawn by eye, in each axis. */
  drawnPipePoint: { value: 0.6, unit: 'm', ...practice },
  /** Of a pipe's point below a thing that was measured: a riser is not quite plumb. */
  tiedPipePoint: { value: 0.05, unit: 'm', ...practice },
  /** Of a pipe's leg in direction, when it is told as a course or a turn. */
  pipeDirection: { value: (3 * Math.PI) / 180, unit: 'rad', ...practice },
  /** How far a pipe that is taken for straight strays to the side in the middle of 10 m. */
  pipeStray: { value: 0.2, unit: 'm', ...practice },
  /** Of the turn of a fitting that is known: joints give a little. */
  fittingAngle: { value: (2 * Math.PI) / 180, unit: 'rad', ...practice },
  knownLength: { value: 0.05, unit: 'm', ...practice },
  /** Between two looks at the same thing from both its sides, and of a look at a point of the plan. */
  sameThing: { value: 0.1, unit: 'm', ...practice },
  /** Of a locate that peak and null agree on, from two directions; at least, and as a share of the depth. */
  locateCrossed: { value: 0.15 / WITHIN_95, unit: 'm', ...pas128 },
  locateCrossedShare: { value: 0.15 / WITHIN_95, unit: '1', ...pas128 },
  /** Of a locate by the peak alone. */
  locatePeak: { value: 0.25 / WITHIN_95, unit: 'm', ...pas128 },
  locatePeakShare: { value: 0.4 / WITHIN_95, unit: '1', ...pas128 },
  /** Of a locate in passing. */
  locateRough: { value: 0.5 / WITHIN_95, unit: 'm', ...pas128 },
  /** Of a pipe that was dug up and seen. */
  exposed: { value: 0.03, unit: 'm', ...practice },
  /** Of a depth that a receiver shows, as a share of it: where peak and null agree, and by the peak alone. */
  locateDepthShare: { value: 0.15 / WITHIN_95, unit: '1', ...pas128 },
  locatePeakDepthShare: { value: 0.4 / WITHIN_95, unit: '1', ...pas128 },
  /** Of an invert or a depth that was taped. */
  tapedLevel: { value: 0.03, unit: 'm', ...practice },
  /** Of the water's depth in a pipe, judged on the screen, as a share of the bore. */
  waterShare: { value: 0.1, unit: '1', ...practice },
} as const satisfies Record<string, SettingRow>;

export type SigmaName = keyof typeof sigmas;

export const sigmaNames = Object.keys(sigmas) as unknown as readonly [SigmaName, ...SigmaName[]]; // keys of a const table
