import type { AnyDigFinding } from '@footmark/dig';
import { describe, expect, it } from 'vitest';
import { sampleYard } from '../testing/sampleYard';
import { digFindingSubject, digFindingText, digFindingTitle } from './digFindingText';

const { site: yard } = sampleYard({ length: 'ft', diameter: 'in', direction: 'bearing' });
const said = { name: '', note: '' };
const site = {
  ...yard,
  digging: {
    ...yard.digging,
    digs: [{ id: 'd1', is: 'trench', path: 'p1', from: 0, to: 6, ...said } as const],
  },
};

const finding = {
  code: 'dig-in-root-zone',
  severity: 'should',
  at: { kind: 'feature', id: 'f2' },
  place: null,
  rule: null,
  values: {
    dig: 'd1',
    tree: 'f2',
    zone: 'critical-root-radius',
    radius: 4.8,
    protected: true,
    share: 0.14,
    atLeast: false,
  },
} as const satisfies AnyDigFinding;

describe('a finding in a line', () => {
  it('says what and how much, and beside it of what', () => {
    expect(digFindingTitle(finding, site)).toBe('Takes 14 % of the root zone of Maple');
    expect(digFindingSubject(finding, site)).toBe('Trench on Lateral, 0.0 ft to 19.69 ft');
  });

  it('names a mark by its label, and nothing where it is of the whole site', () => {
    const about = (at: AnyDigFinding['at'], code: string, values: object) =>
      digFindingSubject({ ...finding, at, code, values } as unknown as AnyDigFinding, site); // one of the union
    expect(
      about({ kind: 'reading', run: 'r1', id: 'q1' }, 'mark-not-private', { whose: 'public', features: [] }),
    ).toBe('Mark A1');
    expect(about({ kind: 'site' }, 'no-boundary', {})).toBe('');
  });

  it('does not name a thing again on its own card', () => {
    const onDig = digFindingText(finding, site, { kind: 'dig', id: 'd1' });
    expect(onDig.text).toBe('This trench takes 14 % of the critical root zone of Maple, which is protected.');
    expect(digFindingTitle(finding, site, { kind: 'feature', id: 'f2' })).toBe(
      'Takes 14 % of the root zone of this tree',
    );
  });

  const atLeast = true;
  const [dig, feature, kind] = ['d1', 'f2', 'tree'];
  it.each([
    ['rock-must-be-stable', { depth: 2 }, 'Straight sides for at least 6.6 ft in rock'],
    ['engineer-designs', { depth: 7 }, 'At least 23.0 ft deep: an engineer’s work'],
    ['dig-crosses-boundary', { feature, length: 2 }, 'Over Maple for at least 6.6 ft'],
    ['dig-in-easement', { feature, area: 3 }, 'At least 32 sq ft of Maple'],
    ['dig-reaches-building', { feature, area: 3 }, 'At least 32 sq ft under Maple'],
    ['dig-takes-pavement', { feature, area: 3 }, 'At least 32 sq ft of Maple to put back'],
    [
      'dig-under-footing',
      { feature, kind, reach: 2 },
      'Below the footing of Maple: stay at least 6.6 ft off',
    ],
    ['dig-in-tolerance-zone', { feature, handDig: 2 }, 'At least 6.6 ft by hand near Maple'],
  ])('tells a least as such: %s', (code, values, title) => {
    const one = { ...finding, code, values: { dig, atLeast, ...values } } as unknown as AnyDigFinding; // one of the union
    expect(digFindingTitle(one, site)).toBe(title);
    const whole = { ...one, values: { ...one.values, atLeast: false } } as AnyDigFinding;
    expect(digFindingTitle(whole, site)).not.toMatch(/at least/i);
  });

  it('of water that lies above the sewer, and not by enough, does not say that it does not', () => {
    const water = { service: 'f2', crosses: false, distance: 1, main: false, above: 0.1 };
    const title = (values: object) =>
      digFindingTitle({ ...finding, code: 'water-too-near', values } as unknown as AnyDigFinding, site); // one of the union
    expect(title(water)).toBe('Maple 3.3 ft off, not high enough above it');
    expect(title({ ...water, crosses: true, main: true })).toBe('Maple crosses, too little between them');
  });
});
