import type { PipeMaterial } from '../document/path';
import type { SettingRow } from './settings';

const practice = { title: 'common practice, no source', edition: '', clause: '', basis: 'practice' } as const;

/** What a profile is computed by where nobody has said better. */
export const profileRules = {
  /** How far from a levelled point, to the side and along the pipe, its level still tells of the ground. */
  groundReach: { value: 3, unit: 'm', ...practice },
  /** Levelled points further apart along the pipe than this leave the ground between them unknown. */
  groundGap: { value: 20, unit: 'm', ...practice },
  /** Standard deviation of the ground's own fall: what a metre away from a levelled point adds. */
  groundFall: { value: 0.03, unit: '1', ...practice },
  /** Standard deviation of a pipe's slope where it is known from nothing but what is said of its stretches. */
  assumedSlope: { value: 0.01, unit: '1', ...practice },
  /** A receiver tells the depth of the sonde's middle, which rides this high above the invert: about half a small head. */
  sondeRide: { value: 0.02, unit: 'm', ...practice },
} as const satisfies Record<string, SettingRow>;

/** Thickness of a pipe's wall as a share of its inside diameter, by material. */
export const wallShares = {
  unknown: { value: 0.1, unit: '1', ...practice },
  clay: { value: 0.15, unit: '1', ...practice },
  'cast-iron': {
    value: 0.15 / 4,
    unit: '1',
    title: 'ASTM A74',
    edition: '',
    clause: 'service weight, 4 inch, barrel 4.30 inches outside, taken as 4 inside',
    basis: 'computed',
  },
  plastic: {
    value: 0.12 / 3.975,
    unit: '1',
    title: 'ASTM D3034',
    edition: '',
    clause: 'SDR 35, 4 inch, 4.215 inches outside with a wall of 0.120',
    basis: 'computed',
  },
  concrete: { value: 0.2, unit: '1', ...practice },
  'bituminised-fibre': { value: 0.1, unit: '1', ...practice },
  other: { value: 0.1, unit: '1', ...practice },
} as const satisfies Record<PipeMaterial, SettingRow>;
