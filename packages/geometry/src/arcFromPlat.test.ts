import { describe, expect, it } from 'vitest';
import { radians } from './angle';
import { arcFromPlat, type PlatArc } from './arcFromPlat';

const right: PlatArc = { radius: 50, turn: 'right', tangent: true };

describe('arcFromPlat', () => {
  it('takes what the plat gives', () => {
    expect(arcFromPlat({ ...right, delta: radians(90) })).toEqual({
      ok: true,
      value: { radius: 50, sweep: radians(90), chord: null },
    });
    expect(arcFromPlat({ ...right, turn: 'left', arcLength: 25, chordAzimuth: 1 })).toEqual({
      ok: true,
      value: { radius: 50, sweep: -0.5, chord: 1 },
    });
    // an equilateral triangle: a chord as long as the radius
    const bySides = arcFromPlat({ ...right, chordLength: 50 });
    expect(bySides.ok && bySides.value.sweep).toBeCloseTo(radians(60), 12);
  });

  it('agrees with measures that differ by what a plat rounds away', () => {
    const whole = { ...right, radius: 30.48, delta: radians(90), arcLength: 47.88, chordLength: 43.1 };
    expect(arcFromPlat(whole).ok).toBe(true); // 157.08 ft and 141.42 ft by hand, in metres to the centimetre
    const major = { ...right, radius: 10, delta: radians(270), chordLength: 14.14 };
    expect(arcFromPlat(major).ok).toBe(true); // the longer way round has the same chord
  });

  it.each<[PlatArc, string, Record<string, number> | undefined]>([
    [
      { ...right, delta: radians(90), arcLength: 70 },
      'delta-against-arc-length',
      { given: 70, computed: 25 * Math.PI },
    ],
    [{ ...right, delta: radians(60), chordLength: 55 }, 'chord-against-delta', { given: 55, computed: 50 }],
    [
      { ...right, arcLength: (50 * Math.PI) / 3, chordLength: 55 },
      'chord-against-arc-length',
      { given: 55, computed: 50 },
    ],
    [{ ...right, chordLength: 101 }, 'chord-past-diameter', { given: 101, computed: 100 }],
    [{ ...right, arcLength: 400 }, 'past-full-circle', { given: 8 }],
    [{ ...right, delta: -1 }, 'not-positive', { given: -1 }],
    [{ ...right, radius: 0, delta: 1 }, 'not-positive', { given: 0 }],
    [{ ...right, delta: Number.NaN }, 'not-positive', { given: Number.NaN }],
    [right, 'extent-missing', undefined],
    [{ radius: 50, turn: 'left', delta: 1 }, 'direction-missing', undefined],
  ])('refuses %j as %s', (plat, code, values) => {
    const solved = arcFromPlat(plat);
    expect(solved).toMatchObject({ ok: false, code });
    if (solved.ok || values === undefined) return;
    for (const [name, value] of Object.entries(values)) {
      if (Number.isNaN(value)) expect(solved.values?.[name]).toBeNaN();
      else expect(solved.values?.[name]).toBeCloseTo(value, 9);
    }
  });
});
