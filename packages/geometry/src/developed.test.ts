import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { developedAt, developedProfile, stationAtDeveloped } from './developed';

/** Even over the range in steps of a millionth, unlike `fc.double`, whose values crowd round 0. */
const between = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 1e6), max: Math.round(max * 1e6) }).map((n) => n / 1e6);

describe('developed length', () => {
  it('equals plan length on a level path', () => {
    const level = developedProfile(30, [], []);
    expect(level.total).toBe(30);
    expect(developedAt(level, 12)).toBe(12);
    expect(stationAtDeveloped(level, 12)).toEqual({ station: 12, inDrop: false, beyond: 0 });
  });

  it('adds slope by stretch and drops, in any order given', () => {
    const profile = developedProfile(
      30,
      [
        { from: 20, slope: 0 },
        { from: 10, slope: 0.75 },
      ],
      [{ station: 25, height: 2 }],
    );
    // 10 level, 10 at 3:4 (12.5), 5 level, a drop of 2, 5 level.
    expect(profile.total).toBe(34.5);
    expect(developedAt(profile, 16)).toBeCloseTo(17.5, 12);
    expect([developedAt(profile, 25), developedAt(profile, 25, 'after')]).toEqual([27.5, 29.5]);
    expect(stationAtDeveloped(profile, 28)).toEqual({ station: 25, inDrop: true, beyond: 0 });
    expect(stationAtDeveloped(profile, 27.5)).toEqual({ station: 25, inDrop: false, beyond: 0 });
    expect(stationAtDeveloped(profile, 29.5)).toEqual({ station: 25, inDrop: false, beyond: 0 });
    expect(stationAtDeveloped(profile, 30.5).station).toBeCloseTo(26, 12);
  });

  it('counts drops at both ends and says how far off the path a length is', () => {
    const drops = [
      { station: 0, height: 3 },
      { station: 10, height: 1 },
    ];
    const profile = developedProfile(10, [], drops);
    expect(profile.total).toBe(14);
    expect(stationAtDeveloped(profile, 2)).toEqual({ station: 0, inDrop: true, beyond: 0 });
    expect(stationAtDeveloped(profile, 13.5)).toEqual({ station: 10, inDrop: true, beyond: 0 });
    expect(stationAtDeveloped(profile, 14)).toEqual({ station: 10, inDrop: false, beyond: 0 });
    expect(stationAtDeveloped(profile, 16)).toEqual({ station: 10, inDrop: false, beyond: 2 });
    expect(stationAtDeveloped(profile, -1)).toEqual({ station: 0, inDrop: false, beyond: -1 });
  });

  it('lets a stretch that began before the path hold, and lists drops off the path', () => {
    const profile = developedProfile(8, [{ from: -5, slope: 0.75 }], [{ station: 9, height: 1 }]);
    expect(profile.total).toBe(10);
    expect(profile.ignoredDrops).toEqual([0]);
  });

  it('has an answer for a path without length', () => {
    const riser = developedProfile(0, [], [{ station: 0, height: 2 }]);
    expect(riser.total).toBe(2);
    expect(stationAtDeveloped(riser, 1)).toEqual({ station: 0, inDrop: true, beyond: 0 });
    expect(stationAtDeveloped(riser, 2)).toEqual({ station: 0, inDrop: false, beyond: 0 });
  });

  it('refuses a negative drop', () => {
    expect(() => developedProfile(10, [], [{ station: 1, height: -1 }])).toThrow(RangeError);
  });

  it('goes there and back for any stretches and drops', () => {
    const station = between(0, 50);
    const stretches = fc.array(fc.record({ from: station, slope: between(0, 2) }), {
      maxLength: 6,
    });
    const drops = fc.array(fc.record({ station, height: between(0, 5) }), {
      maxLength: 4,
    });
    fc.assert(
      fc.property(stretches, drops, fc.array(station, { minLength: 2 }), (s, d, asked) => {
        const profile = developedProfile(50, s, d);
        let last = 0;
        for (const at of asked.toSorted((a, b) => a - b)) {
          const [before, after] = [developedAt(profile, at), developedAt(profile, at, 'after')];
          expect(before).toBeGreaterThanOrEqual(last - 1e-9);
          expect(after).toBeGreaterThanOrEqual(before);
          expect(stationAtDeveloped(profile, before).station).toBeCloseTo(at, 8);
          expect(stationAtDeveloped(profile, after).station).toBeCloseTo(at, 8);
          last = after;
        }
      }),
    );
  });
});
