import type { Finding, FindingCode, FindingValues, Target } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { findingText } from './findingText';
import { sampleYard } from './sampleYard';

/** One of each; a code without one does not compile. */
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

const codes = Object.keys(samples) as FindingCode[]; // keys of the table above

function targetOf(code: FindingCode): Target {
  if (/^(path-|bend|branch|slope|levels|invert)/.test(code)) return { kind: 'path', id: 'p1' };
  if (/^(run-|entry-|sweep-|zero-)/.test(code)) return { kind: 'run', id: 'r1' };
  if (/^(tapes|weak|line|tree|outline|boundary|cannot|control|locate)/.test(code))
    return { kind: 'feature', id: 'f5', vertex: 'b' };
  return { kind: 'reading', run: 'r1', id: 'q4' };
}

const findingOf = (code: FindingCode) =>
  ({ code, severity: 'warning', at: targetOf(code), values: samples[code] }) as unknown as Finding; // one member, by its code

/** Labels, counts and ratios, the only numbers that have no unit. */
const WITHOUT_UNIT = /\b[AB]\d\b|\bf\d\b|\bp\d\b|\b[Ll]eg \d|\bPoint \d|\b\d bends|\b1:[\d,]+/g;
const NUMBER_WITH_UNIT = /\d[\d.⁄½¼¾]*( ft| m\b| %|°|′|″)|[½¼¾]″/g;

describe.each([
  ['decimal feet', 'ft'],
  ['feet and inches', 'ft-in'],
  ['metres', 'm'],
] as const)('in %s', (_, length) => {
  const { site } = sampleYard({ length, diameter: 'in', direction: 'bearing' });

  it.each(codes)('%s is said in whole sentences', (code) => {
    const said = findingText(findingOf(code), site);
    for (const text of [said.text, said.cure]) {
      expect(text).toMatch(/^\p{Lu}.*[^.]\.$/u);
      expect(text).not.toMatch(/undefined|null|NaN|\[object|[{}$]|\s\s/);
      expect(text.replace(WITHOUT_UNIT, '').replace(NUMBER_WITH_UNIT, '')).not.toMatch(/\d/);
    }
  });
});

describe('names', () => {
  const { site } = sampleYard({ length: 'ft', diameter: 'in', direction: 'bearing' });
  const text = (code: FindingCode) => findingText(findingOf(code), site).text;

  it('say the reading with what the counter showed, and how far', () => {
    expect(text('reading-past-end')).toBe(
      'Reading A4 (94.2 ft) lies 3.1 ft past the end of Lateral, which is 88.58 ft of cable from the entry.',
    );
  });

  it('call a thing without a name by its kind', () => {
    expect(text('entry-beside-path')).toContain('Cleanout f3, where run A goes in');
    expect(text('path-cannot-be-computed')).toContain('path p2');
  });

  it('call the corners of an area corners, and the points of a line points', () => {
    expect(text('tie-from-assumed')).toContain('House corner B');
    expect(text('weak-cut')).toContain('Fence point B');
  });

  it('say that it is the paint that is taped where that stands beside its mark', () => {
    const beside = {
      ...site,
      runs: site.runs.map((run) => ({
        ...run,
        readings: run.readings.map((r) => ({ ...r, offset: { azimuth: 0, distance: 2 } })),
      })),
    };
    const said = (code: FindingCode) => findingText(findingOf(code), beside).text;
    expect(said('no-check-tie')).toBe(
      'The paint beside mark A4 has two ties and no third one to check them by.',
    );
    expect(said('paint-under-building')).toBe(
      'The paint beside mark A4 is to stand under House, so it has no ties.',
    );
    expect(text('no-check-tie')).toMatch(/^Mark A4 has two ties/);
  });

  it('say which way a tape is off', () => {
    expect(text('tapes-disagree')).toContain('1.64 ft shorter');
  });

  it('leave a name that looks like an id alone when people gave it', () => {
    const named = { ...site, features: site.features.map((f) => (f.id === 'f3' ? { ...f, name: 'f1' } : f)) };
    const said = findingText(
      { code: 'mark-under-building', severity: 'warning', at: { kind: 'site' }, values: { building: 'f1' } },
      named,
    );
    expect(said.text).toBe('The site lies under f1, so it has no ties.');
  });
});

describe('what a crew found', () => {
  const { site } = sampleYard({ length: 'm', diameter: 'mm', direction: 'azimuth' });
  const text = (code: FindingCode) => findingText(findingOf(code), site).text;

  it('says which way it is off, and calls a crew without a name one', () => {
    expect(text('as-found-outside')).toBe(
      'Crew one found A3 outside of the hole that was to hold it: 0.9 m against the flow and 0.2 m to the right.',
    );
    const straight = findingText(
      {
        code: 'as-found-outside',
        severity: 'warning',
        at: { kind: 'site' },
        values: { label: 'A3', by: 'Crew one', along: 0.9, across: 0 },
      },
      site,
    );
    expect(straight.text).toMatch(/hold it: 0\.9 m with the flow\.$/);
    expect(text('as-found-disagree')).toBe(
      'A3 was found in two places that are 0.5 m apart: by Crew one and by a crew.',
    );
    expect(text('as-found-no-place')).toMatch(/^Where a crew found something cannot be computed/);
  });
});

describe('every finding of a computed yard', () => {
  it('is said', () => {
    const { site, derived } = sampleYard({ length: 'ft', diameter: 'in', direction: 'bearing' });
    expect(derived.findings.map((f) => f.code)).toContain('reading-past-end');
    for (const finding of derived.findings) expect(findingText(finding, site).text).toMatch(/\.$/);
  });
});
