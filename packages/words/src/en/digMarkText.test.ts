import type { ClearanceFinding, LandFinding } from '@footmark/dig';
import { describe, expect, it } from 'vitest';
import { sampleYard } from '../testing/sampleYard';
import { digFindingText } from './digFindingText';

const { site } = sampleYard({ length: 'ft', diameter: 'in', direction: 'bearing' });
const at = { kind: 'reading', run: 'r1', id: 'q1' } as const;
const mark = { run: 'r1', reading: 'q1' } as const;

const onPublic: LandFinding = {
  code: 'mark-not-private',
  severity: 'should',
  at,
  place: null,
  rule: null,
  values: { ...mark, whose: 'public', features: [] },
};

const besideGas: ClearanceFinding = {
  code: 'mark-in-tolerance-zone',
  severity: 'must',
  at,
  place: null,
  rule: 'toleranceZone',
  values: { ...mark, feature: 'f1', kind: 'service', distance: 0.3048, required: 0.6096 },
};

describe('what is said of a mark', () => {
  it('names it, as several are said the same of', () => {
    expect(digFindingText(onPublic, site).text).toMatch(/^Mark A1 is on public land\./);
    expect(digFindingText(besideGas, site).text).toMatch(/^Mark A1 comes within 1\.0 ft of /);
  });

  it('calls it this mark on its own card', () => {
    expect(digFindingText(onPublic, site, at).text).toBe('This mark is on public land.');
  });
});
