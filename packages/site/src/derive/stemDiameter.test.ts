import { describe, expect, it } from 'vitest';
import type { FeatureOf } from '../document/feature';
import { thing, typed } from '../testing/yard';
import { stemDiameterOf } from './stemDiameter';

const tree = (fields: object) => thing('t', 'tree', [typed(0, 0)], fields) as FeatureOf<'tree'>;

describe('stemDiameterOf', () => {
  it('is the trunk’s own, or not known', () => {
    expect(stemDiameterOf(tree({ trunkDiameter: 0.4 }))).toBe(0.4);
    expect(stemDiameterOf(tree({}))).toBeNull();
  });

  // BS 5837:2012, 4.6.1: 200, 250 and 300 mm count as 438.75 mm; eight with a mean of 150 mm as 424.26 mm (from memory)
  it('is the equivalent of several stems, whatever the trunk measures', () => {
    expect(stemDiameterOf(tree({ stemDiameters: [0.2, 0.25, 0.3], trunkDiameter: 0.9 }))).toBeCloseTo(
      0.43875,
      5,
    );
    const eight = [0.1, 0.2, 0.15, 0.15, 0.12, 0.18, 0.14, 0.16];
    expect(stemDiameterOf(tree({ stemDiameters: eight }))).toBeCloseTo(0.42426, 5);
  });
});
