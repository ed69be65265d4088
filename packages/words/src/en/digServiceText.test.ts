import type { AnyDigFinding, ServiceFindingValues } from '@footmark/dig';
import { describe, expect, it } from 'vitest';
import { sampleYard } from '../testing/sampleYard';
import { digFindingText } from './digFindingText';

type InZone = ServiceFindingValues['dig-in-tolerance-zone'];

const { site } = sampleYard({ length: 'ft', diameter: 'in', direction: 'bearing' });
const said = (values: Partial<InZone>) => {
  const all: InZone = {
    dig: 'd1',
    feature: 'f1',
    distance: -0.1,
    zone: 0.6096,
    handDig: 11.25,
    length: 13.4,
    below: null,
    atLeast: false,
    ...values,
  };
  const finding = {
    code: 'dig-in-tolerance-zone',
    severity: 'must',
    at: { kind: 'dig', id: 'd1' },
    place: null,
    rule: 'toleranceZone',
    values: all,
  };
  return digFindingText(finding as AnyDigFinding, site).text; // one member, by its code
};

describe('a dig in the tolerance zone of a service', () => {
  it('is told by how much of it is dug by hand, of how much', () => {
    expect(said({})).toContain('36.9 ft of the 44.0 ft that the trench is long at the ground.');
    expect(said({ atLeast: true })).toContain('by hand: at least 36.9 ft of');
    expect(said({ handDig: null, length: null })).not.toContain('long at the ground');
  });

  it('is told how far below or above its bottom the service lies, where that is known', () => {
    expect(said({ below: 3.048 })).toContain('its top lies 10.0 ft below the bottom of the dig.');
    expect(said({ below: -0.9144 })).toContain('its top lies 3.0 ft above the bottom of the dig.');
    expect(said({})).not.toContain('bottom of the dig');
  });
});
