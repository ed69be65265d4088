import type { FindingCode } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { findingCodes, findingSample } from '../testing/findingSamples';
import { sampleYard } from '../testing/sampleYard';
import { findingText } from './findingText';

/** Labels, counts and ratios, the only numbers that have no unit. */
const WITHOUT_UNIT = /\b[AB]\d\b|\bf\d\b|\bp\d\b|\b[Ll]eg \d|\bPoint \d|\b\d bends|\b1:[\d,]+/g;
const NUMBER_WITH_UNIT = /\d[\d.⁄½¼¾]*( ft| m\b| %|°|′|″)|[½¼¾]″/g;

describe.each([
  ['decimal feet', 'ft'],
  ['feet and inches', 'ft-in'],
  ['metres', 'm'],
] as const)('in %s', (_, length) => {
  const { site } = sampleYard({ length, diameter: 'in', direction: 'bearing' });

  it.each(findingCodes)('%s is said in whole sentences', (code) => {
    const said = findingText(findingSample(code), site);
    for (const text of [said.text, said.cure]) {
      expect(text).toMatch(/^\p{Lu}.*[^.]\.$/u);
      expect(text).not.toMatch(/undefined|null|NaN|\[object|[{}$]|\s\s/);
      expect(text.replace(WITHOUT_UNIT, '').replace(NUMBER_WITH_UNIT, '')).not.toMatch(/\d/);
    }
  });
});

describe('names', () => {
  const { site } = sampleYard({ length: 'ft', diameter: 'in', direction: 'bearing' });
  const text = (code: FindingCode) => findingText(findingSample(code), site).text;

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
    const said = (code: FindingCode) => findingText(findingSample(code), beside).text;
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
  const text = (code: FindingCode) => findingText(findingSample(code), site).text;

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
