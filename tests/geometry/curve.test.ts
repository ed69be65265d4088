import {
  arcLength,
  cableFromCounter,
  cableSaved,
  developedAt,
  developedProfile,
  entryLeg,
  external,
  locate,
  longChord,
  middleOrdinate,
  pathLength,
  pathLine,
  pointAtAzimuth,
  radians,
  stationAtDeveloped,
  tangentLength,
} from '@footmark/geometry';
import { describe, expect, it } from 'vitest';

const FOOT = 0.3048;
const INCH = FOOT / 12;

describe('curve elements of a bend', () => {
  // Radius 9 in. Computed independently from the textbook relations T = R tan(d/2), L = R d (d in radians).
  it.each([
    [22.5, 1.7902, 3.5343, 0.0461],
    [45, 3.7279, 7.0686, 0.3873],
    [60, 5.1962, 9.4248, 0.9675],
    [90, 9.0, 14.1372, 3.8628],
  ])('at %s° and radius 9 in', (deflection, tangent, arc, saved) => {
    const [r, d] = [9 * INCH, radians(deflection)];
    expect(tangentLength(r, d) / INCH).toBeCloseTo(tangent, 4);
    expect(arcLength(r, d) / INCH).toBeCloseTo(arc, 4);
    expect(cableSaved(r, d) / INCH).toBeCloseTo(saved, 3);
    expect(tangentLength(r, -d)).toBe(tangentLength(r, d));
  });

  it('has the chord, external and middle ordinate of the textbook', () => {
    // 90°: chord R√2, external R(√2 − 1), middle ordinate R(1 − √½); 60°: chord R. Closed forms.
    expect(longChord(1, radians(90))).toBeCloseTo(Math.SQRT2, 14);
    expect(longChord(5, radians(60))).toBeCloseTo(5, 14);
    expect(external(1, radians(90))).toBeCloseTo(Math.SQRT2 - 1, 14);
    expect(middleOrdinate(1, radians(90))).toBeCloseTo(1 - Math.SQRT1_2, 14);
  });

  // The same in the design document, radius 1 ft.
  it.each([
    [45, 0.043],
    [90, 0.4292],
  ])('saves cable round a %s° sweep of radius 1 ft', (deflection, savedFt) => {
    expect(cableSaved(FOOT, radians(deflection)) / FOOT).toBeCloseTo(savedFt, 4);
  });

  it('appears in the length of a path with that bend', () => {
    const bend = pathLine([
      { point: { x: 0, y: 0 }, bendRadius: 0 },
      { point: { x: 0, y: 3 }, bendRadius: 9 * INCH },
      { point: pointAtAzimuth({ x: 0, y: 3 }, radians(45), 3), bendRadius: 0 },
    ]);
    expect(bend.ok && (6 - pathLength(bend.value)) / INCH).toBeCloseTo(0.3873, 3);
  });
});

describe('an offset with two equal bends', () => {
  // Travel = offset / sin d, run = offset / tan d: the fitter's multipliers, computed independently.
  it.each([
    [22.5, 2.61313, 2.41421],
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: the figure as tabled
    [45, 1.41421, 1.0],
    [60, 1.1547, 0.57735],
  ])('at %s° has the travel and run of the fitter’s table', (deflection, travel, run) => {
    const turn = radians(deflection);
    const corner = { x: 0, y: 10 };
    const second = pointAtAzimuth(corner, turn, travel);
    expect(second.x).toBeCloseTo(1, 5);
    expect(second.y - corner.y).toBeCloseTo(run, 4);
    const line = pathLine([
      { point: { x: 0, y: 0 }, bendRadius: 0 },
      { point: corner, bendRadius: 0 },
      { point: second, bendRadius: 0 },
      { point: { x: second.x, y: 20 }, bendRadius: 0 },
    ]);
    expect(line.ok && pathLength(line.value)).toBeCloseTo(20 + travel - run, 4);
    expect(line.ok && locate(line.value, 10 + travel + 1).azimuth).toBeCloseTo(0, 12);
  });
});

describe('plan length lost to slope', () => {
  // 100 ft of cable; losses computed independently (h = √(s² − dz²)).
  it.each([
    ['1/8 in/ft', 1 / 96, 0.0054],
    ['1/4 in/ft', 1 / 48, 0.0217],
    ['1:8', 1 / 8, 0.772],
  ])('at %s', (_, slope, lossFt) => {
    const profile = developedProfile(200 * FOOT, [{ from: 0, slope }], []);
    const { station } = stationAtDeveloped(profile, 100 * FOOT);
    expect(100 - station / FOOT).toBeCloseTo(lossFt, 3);
    expect(developedAt(profile, station) / FOOT).toBeCloseTo(100, 10);
  });

  it('of a rod that falls 4 ft in 10 ft is 0.835 ft', () => {
    // 10 − √(10² − 4²), computed independently; the slope along that rod is 4/√84.
    const profile = developedProfile(20, [{ from: 0, slope: 4 / Math.sqrt(84) }], []);
    expect(10 - stationAtDeveloped(profile, 10).station).toBeCloseTo(0.835, 3);
  });
});

describe('reading to cable', () => {
  it('is the scale times the reading from the zero', () => {
    // 60 ft counted from a zero at 5 ft on a counter that pays out 2 % more than it counts: by hand.
    const cable = cableFromCounter({ reading: 60 * FOOT, zero: 5 * FOOT, scale: 1.02 });
    expect(cable / FOOT).toBeCloseTo(56.1, 10);
  });

  it('less an entry leg of the drop minus what the sweep saves', () => {
    // 4 ft riser, sweep of 1 ft: 4 − 0.4292.
    const leg = entryLeg({ riserDrop: 4 * FOOT, sweepRadius: FOOT, sweepAngle: radians(90) });
    expect(leg / FOOT).toBeCloseTo(3.5708, 4);
  });

  it('agrees with a riser drawn as a path seen from the side', () => {
    const [drop, radius, run] = [1.2, 0.3, 5];
    const side = pathLine([
      { point: { x: 0, y: drop }, bendRadius: 0 },
      { point: { x: 0, y: 0 }, bendRadius: radius },
      { point: { x: run, y: 0 }, bendRadius: 0 },
    ]);
    const leg = entryLeg({ riserDrop: drop, sweepRadius: radius, sweepAngle: Math.PI / 2 });
    for (const along of [0.5, 1, 4]) {
      expect(side.ok && locate(side.value, leg + along).point.x).toBeCloseTo(along, 12);
    }
  });
});
