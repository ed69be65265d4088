import { describe, expect, it } from 'vitest';
import { derive } from '../derive/derive';
import { setNorth } from '../edits/frameEdits';
import { DEGREE, yard } from '../testing/yard';
import { planAzimuth, trueAzimuth } from './trueAzimuth';

describe('directions on a sketch that is turned', () => {
  // straight up on the plan looks along 90°: up is east, right is south
  const { frame } = derive(setNorth(yard(), { north: { by: 'typed', azimuth: 90 * DEGREE } }));

  it.each([
    ['up', 0, 90],
    ['right', 90, 180],
    ['down', 180, 270],
    ['left', 270, 0],
  ])('%s on the plan', (_, plan, fromNorth) => {
    expect(trueAzimuth(frame, plan * DEGREE) / DEGREE).toBeCloseTo(fromNorth, 9);
    expect(planAzimuth(frame, fromNorth * DEGREE) / DEGREE).toBeCloseTo(plan, 9);
  });

  it('are told from the plan where nobody knows north', () => {
    const unknown = derive(yard()).frame;
    expect(trueAzimuth(unknown, 1)).toBe(1);
    expect(planAzimuth(unknown, 1)).toBe(1);
  });
});
