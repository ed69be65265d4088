import type { Finding, FindingCode, FindingValues, Target } from '@footmark/site';

/** Values of one finding of each code; a code without one does not compile. */
const samples: FindingValues = {
  'tapes-too-short': { gap: 0.5, a: 'House A', b: 'f3' },
  'tapes-too-long': { gap: 0.5, a: 'House A', b: 'f3' },
  'tapes-same-place': { a: 'House A', b: 'f3' },
  'tapes-not-converged': { a: 'House A' },
  'tapes-one-way': { axis: 0.3 },
  'tapes-disagree': { worst: 'House A', by: -0.5 },
  'weak-cut': { cut: 0.2 },
  'line-has-no-length': { a: 'House A', b: 'House B' },
  'tree-has-no-diameter': {},
  'outline-crosses-itself': {},
  'boundary-misclosure': { misclosure: 0.02, ratio: 4123, balanced: true },
  'cannot-balance': { because: 'held' },
  'north-line-has-no-length': { a: 'House A', b: 'f3' },
  'north-needs-two-control-points': { points: 1 },
  'control-points-coincide': {},
  'control-too-close': { sigma: 0.05, apart: 4.2 },
  'control-scale-differs': { scale: 3.28 },
  'control-inaccurate': { accuracy: 60, limit: 10 },
  'control-disagrees': { residual: 12, accuracy: 3 },
  'control-too-far': { reach: 50_000 },
  'underlay-span-is-nothing': { underlay: 'Plat' },
  'underlay-pairs-coincide': { underlay: 'Plat' },
  'underlay-pair-disagrees': { underlay: 'Plat', pair: 2, by: 0.4 },
  'path-too-few-points': {},
  'path-arc-taken-straight': {},
  'path-leg-has-no-length': { leg: 2 },
  'bend-does-not-fit': { vertices: 2 },
  'branch-apart-from-path': { distance: 0.5 },
  'slope-too-flat': { from: 2, to: 12, slope: 0.004, sigma: 0.001, least: 1 / 96 },
  'slope-against-flow': { from: 2, to: 12, slope: -0.012, sigma: 0.001 },
  'slope-unsure': { from: 2, to: 12, slope: 0.012, sigma: 0.0057, least: 1 / 96, others: 2, whole: true },
  'levels-disagree': { by: 0.2, allowed: 0.08, a: 'Lateral B', b: 'f3' },
  'invert-above-ground': { by: 0.4, station: 12 },
  'run-has-no-entry': {},
  'run-has-no-path': {},
  'path-cannot-be-computed': { path: 'p2' },
  'entry-not-on-path': { entry: 'f3', path: 'Lateral', distance: 2, reach: 0.9144 },
  'entry-beside-path': { entry: 'f3', path: 'Lateral', distance: 0.5 },
  'branch-not-on-run': { branch: 'p2' },
  'zero-point-not-on-run': {},
  'sweep-does-not-fit': { riser: 0, sweepRadius: 0.2286 },
  'reading-before-zero': { reading: 0.1, zero: 0.3 },
  'reading-in-riser': { short: 0.5 },
  'reading-off-known-way': { beyond: 3, length: 27 },
  'reading-past-end': { beyond: 3.1 * 0.3048, length: 27, path: 'Lateral' },
  'counter-went-back': { reading: 5, before: 'A3', beforeReading: 6 },
  'reading-in-drop': {},
  'mark-under-building': { building: 'House' },
  'paint-under-building': { building: 'House' },
  'no-ties': { within: 30.48 },
  'no-check-tie': {},
  'ties-weak': { cut: 0.2 },
  'tie-from-assumed': { from: 'f1/b' },
  'seen-point-not-on-run': {},
  'locate-depth-rough': {},
  'locate-has-no-reading': {},
  'locate-reading-has-no-place': { reading: 'A3' },
  'pair-of-one-run': { a: 'A3', b: 'A4' },
  'pair-on-two-paths': { a: 'A3', b: 'B1', pathA: 'Lateral', pathB: 'p2' },
  'cables-too-short': { a: 'A3', b: 'B1', pointA: 'f3/a', pointB: 'f4/a', gap: 0.4 },
  'as-found-mark-gone': { label: 'A3', by: 'Crew one' },
  'as-found-mark-moved': { label: 'A3', by: '', moved: 0.3 },
  'as-found-no-place': { label: '', by: '' },
  'as-found-outside': { label: 'A3', by: 'Crew one', along: -0.9, across: 0.2 },
  'as-found-disagree': { label: 'A3', a: 'Crew one', b: '', apart: 0.5 },
  'as-found-depths-disagree': { label: 'A3', a: 'Crew one', b: 'Crew two', apart: 0.5 },
  'as-found-and-not-found': { label: 'A3', a: '', b: 'Crew two' },
};

export const findingCodes = Object.keys(samples) as FindingCode[]; // keys of the table above

function targetOf(code: FindingCode): Target {
  if (/^(path-|bend|branch|slope|levels|invert)/.test(code)) return { kind: 'path', id: 'p1' };
  if (/^(run-|entry-|sweep-|zero-)/.test(code)) return { kind: 'run', id: 'r1' };
  if (/^(tapes|weak|line|tree|outline|boundary|cannot|control|locate)/.test(code))
    return { kind: 'feature', id: 'f5', vertex: 'b' };
  return { kind: 'reading', run: 'r1', id: 'q4' };
}

export const findingSample = (code: FindingCode) =>
  ({ code, severity: 'warning', at: targetOf(code), values: samples[code] }) as unknown as Finding; // one member, by its code
