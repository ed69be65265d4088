import type { SettingRow } from './settings';

const FOOT_M = 0.3048;
const INCH_M = 0.0254;
const PER_INCH = FOOT_M / INCH_M;
const bs = (clause: string, basis: SettingRow['basis'] = 'memory') =>
  ({ title: 'BS 5837', edition: '2012', clause, basis }) as const;
const as = (clause: string, basis: SettingRow['basis'] = 'read') =>
  ({ title: 'AS 4970', edition: '2009 (replaced by 2025)', clause, basis }) as const;
const matheny = (clause: string) =>
  ({ title: 'Matheny and Clark, Trees and Development', edition: '1998', clause, basis: 'memory' }) as const;
const stevensPoint = (clause: string) =>
  ({
    title: 'City of Stevens Point WI, Forestry Specifications',
    edition: '',
    clause,
    basis: 'read',
  }) as const;

/** Ways to tell how far a tree's roots matter. None is law for a private yard unless a local ordinance says so. */
export const treeRuleIds = [
  'bs-5837',
  'as-4970',
  'critical-root-radius',
  'tolerance-and-age',
  'six-diameters',
  'bore-distance',
] as const;
export type TreeRuleId = (typeof treeRuleIds)[number];

/** Numbers of the tree rules. Radii per trunk diameter are plain numbers, both in the same unit. */
export const treeRules = {
  rpaPerDiameter: {
    value: 12,
    unit: '1',
    ...bs('4.6.1, root protection area, radius 12 stem diameters at 1.5 m'),
  },
  rpaMost: { value: 15, unit: 'm', ...bs('Annex D, at most 707 m², radius 15 m', 'read') },
  tpzPerDiameter: { value: 12, unit: '1', ...as('3.2, tree protection zone, radius 12 DBH at 1.4 m') },
  tpzLeast: { value: 2, unit: 'm', ...as('3.2, at least 2 m') },
  tpzMost: { value: 15, unit: 'm', ...as('3.2, at most 15 m') },
  srzFactor: { value: 50, unit: '1', ...as('3.3.5, structural root zone, (D × 50)^0.42 × 0.64') },
  srzExponent: { value: 0.42, unit: '1', ...as('3.3.5') },
  srzScale: { value: 0.64, unit: '1', ...as('3.3.5') },
  srzLeast: { value: 1.5, unit: 'm', ...as('3.3.5, below 0.15 m of diameter') },
  minorEncroachment: {
    value: 0.1,
    unit: '1',
    ...as('3.3.2, up to 10 % of the zone and outside the structural root zone is minor'),
  },
  crrPerDiameter: {
    value: 1 * PER_INCH,
    unit: '1',
    title: 'University of Minnesota Extension',
    edition: '1999',
    clause: 'critical root radius, 1 ft per inch of DBH',
    basis: 'read',
  },
  crrPerDiameterSensitive: {
    value: 1.5 * PER_INCH,
    unit: '1',
    title: 'University of Minnesota Extension',
    edition: '1999',
    clause: 'critical root radius, 1.5 ft per inch for older, sensitive or unhealthy trees',
    basis: 'read',
  },
  goodYoung: { value: 0.5 * PER_INCH, unit: '1', ...matheny('good tolerance, young: 0.5 ft per inch') },
  goodMature: { value: 0.75 * PER_INCH, unit: '1', ...matheny('good tolerance, mature: 0.75 ft per inch') },
  goodOvermature: { value: 1 * PER_INCH, unit: '1', ...matheny('good tolerance, overmature: 1 ft per inch') },
  moderateYoung: {
    value: 0.75 * PER_INCH,
    unit: '1',
    ...matheny('moderate tolerance, young: 0.75 ft per inch'),
  },
  moderateMature: { value: 1 * PER_INCH, unit: '1', ...matheny('moderate tolerance, mature: 1 ft per inch') },
  moderateOvermature: {
    value: 1.25 * PER_INCH,
    unit: '1',
    ...matheny('moderate tolerance, overmature: 1.25 ft per inch'),
  },
  poorYoung: { value: 1 * PER_INCH, unit: '1', ...matheny('poor tolerance, young: 1 ft per inch') },
  poorMature: { value: 1.25 * PER_INCH, unit: '1', ...matheny('poor tolerance, mature: 1.25 ft per inch') },
  poorOvermature: {
    value: 1.5 * PER_INCH,
    unit: '1',
    ...matheny('poor tolerance, overmature: 1.5 ft per inch'),
  },
  trenchDiameters: {
    value: 6,
    unit: '1',
    title: 'Ionia MI ordinance',
    edition: '',
    clause: 'no trench within 6 trunk diameters',
    basis: 'read',
  },
  stabilityDiameters: {
    value: 3,
    unit: '1',
    title: 'common practice, no source',
    edition: '',
    clause: '',
    basis: 'practice',
  },
  boreTo4: { value: 3 * FOOT_M, unit: 'm', ...stevensPoint('bore within 3 ft of trunks to 4 in') },
  boreTo9: { value: 8 * FOOT_M, unit: 'm', ...stevensPoint('bore within 8 ft of trunks of 5 to 9 in') },
  boreTo14: { value: 10 * FOOT_M, unit: 'm', ...stevensPoint('bore within 10 ft of trunks of 10 to 14 in') },
  boreTo19: { value: 12 * FOOT_M, unit: 'm', ...stevensPoint('bore within 12 ft of trunks of 15 to 19 in') },
  boreOver19: { value: 15 * FOOT_M, unit: 'm', ...stevensPoint('bore within 15 ft of trunks over 19 in') },
  boreDepth: { value: 3 * FOOT_M, unit: 'm', ...stevensPoint('bore at least 3 ft deep') },
  boreDepthNear: {
    value: 4.5 * FOOT_M,
    unit: 'm',
    title: 'Arlington County VA',
    edition: '',
    clause: 'bore at least 4.5 ft deep within 10 ft of trunks to 6 in, 15 ft of larger ones',
    basis: 'read',
  },
  boreSmallTrunk: {
    value: 6 * INCH_M,
    unit: 'm',
    title: 'Arlington County VA',
    edition: '',
    clause: 'trunks to 6 in are small',
    basis: 'read',
  },
  boreNearSmall: {
    value: 10 * FOOT_M,
    unit: 'm',
    title: 'Arlington County VA',
    edition: '',
    clause: 'near: 10 ft from trunks to 6 in',
    basis: 'read',
  },
  boreNearLarge: {
    value: 15 * FOOT_M,
    unit: 'm',
    title: 'Arlington County VA',
    edition: '',
    clause: 'near: 15 ft from trunks over 6 in',
    basis: 'read',
  },
} as const satisfies Record<string, SettingRow>;

/** Which bore distance holds for trunks up to a diameter (m), smallest first. A trunk between two of the table's whole inches has the larger. */
export const boreDistances = [
  { upTo: 4 * INCH_M, rule: 'boreTo4' },
  { upTo: 9 * INCH_M, rule: 'boreTo9' },
  { upTo: 14 * INCH_M, rule: 'boreTo14' },
  { upTo: 19 * INCH_M, rule: 'boreTo19' },
  { upTo: Infinity, rule: 'boreOver19' },
] as const satisfies readonly { readonly upTo: number; readonly rule: keyof typeof treeRules }[];
