import {
  type FileProblem,
  MOST_SITE_CHARACTERS,
  type OpenFailure,
  openSite,
  openSiteValue,
  writeSite,
} from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { sampleYard } from '../testing/sampleYard';
import { fileProblemText } from './fileProblemText';

const { site } = sampleYard({ length: 'ft', diameter: 'in', direction: 'bearing' });

/** A copy of the sample yard with one thing changed by `spoil`. */
function refusalOf(spoil: (raw: ReturnType<typeof JSON.parse>) => void) {
  const raw = JSON.parse(writeSite(site));
  spoil(raw);
  const opened = openSiteValue(raw);
  if (opened.ok) throw new Error('the spoilt site still opens');
  return fileProblemText(opened.failure);
}

describe('a file that is not a sound site', () => {
  it.each<readonly [string, (raw: ReturnType<typeof JSON.parse>) => void, string]>([
    ['missing', (raw) => delete raw.features[3].vertices[0].spot, 'features[3].vertices[0].spot: '],
    [
      'unknown-field',
      (raw) => Object.assign(raw.runs[0], { colour: 1 }),
      'runs[0].colour: a site has no field called "colour" here',
    ],
    [
      'wrong-value',
      (raw) => Object.assign(raw.paths[0], { bendRadius: -1 }),
      'paths[0].bendRadius: this value does not fit',
    ],
    [
      'duplicate-id',
      (raw) => Object.assign(raw.paths[0], { id: 'f1' }),
      'paths[0].id: the id "f1" is used before',
    ],
    [
      'unknown-point',
      (raw) => Object.assign(raw.paths[1].vertices[1].spot.point, { at: 'z' }),
      'paths[1].vertices[1].spot: there is no point "p1/z"',
    ],
    [
      'unknown-path',
      (raw) => Object.assign(raw.runs[0], { path: 'p9' }),
      'runs[0].path: there is no path "p9"',
    ],
    [
      'unknown-entry',
      (raw) => Object.assign(raw.runs[0], { entry: 'f9' }),
      'runs[0].entry: there is no feature "f9"',
    ],
    [
      'nothing-before',
      (raw) =>
        Object.assign(raw.features[0].vertices[0], { spot: { by: 'course', azimuth: 0, distance: 1 } }),
      'features[0].vertices[0].spot: point "a" is measured',
    ],
    [
      'depends-on-itself',
      (raw) =>
        Object.assign(raw.features[1].vertices[0], { spot: { by: 'at', point: { of: 'f2', at: 'a' } } }),
      'features[1].vertices[0].spot: point "f2/a" is measured',
    ],
    [
      'stretches-out-of-order',
      (raw) => Object.assign(raw.paths[0].stretches[0], { from: 2 }),
      'paths[0].stretches[0].from: stretches begin at 0',
    ],
  ])('%s: says the place', (_, spoil, start) => {
    const { text, cure, problems } = refusalOf(spoil);
    expect(text).toMatch(/\.$/);
    expect(cure).toMatch(/\.$/);
    expect(problems.some((p) => p.startsWith(start))).toBe(true);
  });

  it('joins itself: says which path', () => {
    const { problems } = refusalOf((raw) => {
      raw.paths[0].vertices[2].spot = { by: 'at', point: { of: 'p2', at: 'a' } };
    });
    expect(problems).toEqual([
      expect.stringMatching(/^paths\[[01]\]\.vertices: path "p[12]" joins, by way of others, itself$/),
    ]);
  });

  it('has words for every code that the sound and the shape can break', () => {
    const codes: Record<FileProblem['code'], true> = {
      'wrong-value': true,
      'unknown-field': true,
      missing: true,
      'duplicate-id': true,
      'unknown-point': true,
      'unknown-path': true,
      'unknown-entry': true,
      'unknown-visit': true,
      'unknown-reading': true,
      'paired-with-itself': true,
      'length-to-itself': true,
      'dig-out-of-order': true,
      'nothing-before': true,
      'depends-on-itself': true,
      'joins-itself': true,
      'stretches-out-of-order': true,
    };
    for (const code of Object.keys(codes) as FileProblem['code'][]) {
      const failure: OpenFailure = { code: 'invalid', problems: [{ code, path: [], detail: 'x' }], more: 2 };
      const { text, problems } = fileProblemText(failure);
      expect(text).toContain('3 places');
      expect(problems[0]).toMatch(/^the whole file: \S/);
      expect(problems[1]).toBe('and 2 more');
    }
  });

  it('hints at what a number that is none means', () => {
    const { cure, problems } = refusalOf((raw) => {
      raw.features[1].vertices[0].spot.x = Number.NaN;
    });
    expect(problems[0]).toMatch(/^features\[1\]\.vertices\[0\]\.spot\.x: /);
    expect(cure).toContain('NaN and Infinity are not numbers');
  });
});

describe('a file that is no site at all', () => {
  it.each<readonly [string, string, RegExp]>([
    [
      'too-large',
      ' '.repeat(MOST_SITE_CHARACTERS + 1),
      /too large for a site: 20\.0 MB, and the most is 20\.0 MB\.$/,
    ],
    ['not-json', '{"format": "footmark-site",}', /not JSON/],
    ['not-a-site', '{"type": "FeatureCollection"}', /is JSON, but it is not a site\.$/],
    [
      'newer-version',
      '{"format": "footmark-site", "version": 99}',
      /version 99, and this program knows up to version 3\.$/,
    ],
  ])('%s', (code, file, expected) => {
    const opened = openSite(file);
    expect(opened).toMatchObject({ ok: false, failure: { code } });
    if (opened.ok) return;
    const { text, cure } = fileProblemText(opened.failure);
    expect(text).toMatch(expected);
    expect(cure).toMatch(/\.$/);
  });

  it('says where the JSON breaks', () => {
    const failure: OpenFailure = { code: 'not-json', position: 26, near: '"x": NaN,' };
    expect(fileProblemText(failure)).toMatchObject({
      problems: ['character 27, near "\\"x\\": NaN,"'],
      cure: expect.stringContaining('NaN'),
    });
  });
});
