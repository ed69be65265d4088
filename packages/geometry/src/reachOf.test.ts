import { describe, expect, it } from 'vitest';
import { pointAtAzimuth } from './angle';
import { intersectCircles } from './circles';
import { distance, type Point } from './point';
import { beginOfArc, type KnownPoint } from './reachArcs';
import { type Reach, reachOf } from './reachOf';

const at = (x: number, y: number): Point => ({ x, y });
const known = (x: number, y: number, cable: number): KnownPoint => ({ at: at(x, y), cable });

function reach(knowns: readonly KnownPoint[], tolerance = 0): Reach {
  const found = reachOf(knowns, tolerance);
  if (!found.ok) throw new Error(found.code);
  return found.value;
}

describe('the corners of a lens', () => {
  it('are where two tapes of those lengths meet', () => {
    for (const [r1, r2, base] of [
      [6, 8, 10],
      [3, 10, 8],
      [20.5, 20.5, 40],
      [1, 1.001, 2],
    ] as const) {
      const [c1, c2] = [at(2, -1), pointAtAzimuth(at(2, -1), 1, base)];
      const cuts = intersectCircles(c1, r1, c2, r2);
      if (!cuts.ok) throw new Error(cuts.code);
      const corners = reach([
        { at: c1, cable: r1 },
        { at: c2, cable: r2 },
      ]).arcs.map(beginOfArc);
      expect(corners.length).toBe(2);
      for (const p of cuts.value.points) {
        expect(Math.min(...corners.map((corner) => distance(corner, p)))).toBeLessThan(1e-9);
      }
    }
  });
});

describe('degenerate reaches', () => {
  it('are the disc of one known point, its outline within the sagitta', () => {
    const disc = reach([known(3, 4, 5)]);
    expect(disc).toMatchObject({ kind: 'disc', at: at(3, 4), radius: 5, halfWidth: 5, short: 0 });
    expect(disc.area).toBeCloseTo(25 * Math.PI, 12);
    const middles = disc.outline.map((p, i) => {
      const q = disc.outline[(i + 1) % disc.outline.length] ?? p;
      return 5 - distance(at((p.x + q.x) / 2, (p.y + q.y) / 2), at(3, 4));
    });
    expect(Math.max(...middles)).toBeLessThanOrEqual(0.002);
    expect(Math.max(...middles)).toBeGreaterThan(0.0015);
  });

  it('are a ring even of a disc that the sagitta would swallow', () => {
    expect(reach([known(3, 4, 0.001)]).outline.length).toBe(3);
  });

  it('have the exact area of a lens as thin as a thread', () => {
    // r²·(2α − sin 2α) for centres 2r·cos α apart; at 0.09 rad the difference still has twelve digits, and with less its first
    // terms (2α)³/3! − (2α)⁵/5! have them.
    for (const [angle, excess] of [
      [0.09, 0.09 - Math.sin(0.09)],
      [1e-3, 1e-9 / 6 - 1e-15 / 120],
    ] as const) {
      const lens = reach([known(0, 0, 30), known(60 * Math.cos(angle / 2), 0, 30)]);
      expect(lens.area / (900 * excess)).toBeCloseTo(1, 8);
    }
  });

  it('are the smaller disc when another one holds it, touching it from inside or not', () => {
    for (const outer of [known(1, 0, 20), known(4, 0, 9), known(0, 0, 5), known(0, 0, 6)]) {
      const inner = known(0, 0, 5);
      const expected = { kind: 'disc', at: at(0, 0), radius: 5, area: expect.closeTo(25 * Math.PI, 10) };
      expect(reach([outer, inner])).toMatchObject(expected);
      expect(reach([inner, outer])).toMatchObject(expected);
      expect(reach([outer, inner, known(100, 0, 200)])).toMatchObject(expected);
    }
  });

  it('leave a redundant third disc out', () => {
    const [a, b] = [known(0, 0, 6), known(10, 0, 8)];
    const lens = reach([a, b]);
    expect(reach([a, b, known(5, 5, 40)])).toEqual(lens);
    expect(reach([a, b, a])).toEqual(lens);
    const first = reach([known(5, 5, 40), a, b]);
    expect(first.area).toBe(lens.area);
    expect(first.arcs.map((arc) => arc.known)).toEqual([2, 1]);
    // a third rim that runs through a corner of the lens and holds it otherwise
    expect(reach([a, b, known(3.6, 0, 4.8)]).area).toBeCloseTo(lens.area, 9);
  });

  it('are a point without cable, and where the cables are as long as the distance', () => {
    expect(reach([known(3, 4, 0)])).toMatchObject({ kind: 'disc', radius: 0, area: 0, outline: [at(3, 4)] });
    expect(reach([known(3, 4, 0), known(0, 0, 9)])).toMatchObject({ kind: 'disc', at: at(3, 4), radius: 0 });
    const taut = reach([known(0, 0, 4), known(10, 0, 6)]);
    expect(taut).toMatchObject({ kind: 'disc', radius: 0, halfWidth: 0, area: 0 });
    expect(taut.kind === 'disc' && distance(taut.at, at(4, 0))).toBeLessThan(1e-6);
    expect(taut.outline.length).toBe(1);
    // 0.1 + 0.2 is not 0.3 in binary
    expect(reach([known(0, 0, 0.1), known(0.3, 0, 0.2)]).area).toBeLessThan(1e-12);
  });

  it('refuse what a caller must not ask', () => {
    expect(() => reachOf([])).toThrow(RangeError);
    expect(() => reachOf([known(0, 0, -1)])).toThrow(RangeError);
    expect(() => reachOf([known(0, Number.NaN, 1)])).toThrow(RangeError);
    expect(() => reachOf([known(0, 0, Infinity)])).toThrow(RangeError);
    expect(() => reachOf([known(0, 0, 1)], -0.1)).toThrow(RangeError);
  });
});

describe('cables that contradict each other', () => {
  it('name the pair that is furthest apart and its gap', () => {
    const knowns = [known(0, 0, 4), known(0, 3, 4), known(10, 0, 5), known(0, 12, 5)];
    expect(reachOf(knowns)).toEqual({
      ok: false,
      code: 'apart',
      values: { gap: expect.closeTo(Math.hypot(10, 12) - 10, 12), first: 2, second: 3 },
    });
    expect(reachOf([known(0, 0, 4), known(10, 0, 5)])).toEqual({
      ok: false,
      code: 'apart',
      values: { gap: 1, first: 0, second: 1 },
    });
  });

  it('are let pass up to the tolerance, and meet half-way over the gap', () => {
    const knowns = [known(0, 0, 4), known(10, 0, 5)];
    expect(reachOf(knowns, 0.999).ok).toBe(false);
    const met = reach(knowns, 1.001);
    expect(met).toMatchObject({ kind: 'disc', radius: 0, area: 0, short: expect.closeTo(1, 7) });
    expect(distance(met.outline[0] ?? at(0, 0), at(4.5, 0))).toBeLessThan(1e-6);
  });

  it('name three that meet two by two and have no place in common', () => {
    // An equilateral triangle of 10 m: the centre is 10/√3 from each corner, so 5.5 m of cable lack 10/√3 − 5.5 each.
    const trio = [known(0, 0, 5.5), known(10, 0, 5.5), known(5, 5 * Math.sqrt(3), 5.5)];
    const each = 10 / Math.sqrt(3) - 5.5;
    expect(reachOf([known(5, 3, 30), ...trio, known(5, 2, 7)])).toEqual({
      ok: false,
      code: 'no-common-place',
      values: { each: expect.closeTo(each, 8), first: 1, second: 2, third: 3 },
    });
    expect(reachOf(trio, 2 * each - 1e-6).ok).toBe(false);
    const met = reach(trio, 2 * each + 1e-6);
    expect(met).toMatchObject({ kind: 'disc', radius: 0, short: expect.closeTo(2 * each, 7) });
    expect(distance(met.outline[0] ?? at(0, 0), at(5, 5 / Math.sqrt(3)))).toBeLessThan(1e-6);
  });

  it('of three are a point as long as no more than rounding is common', () => {
    const feature = at(5, -3);
    const bearings = [0.1, 1.9, 4.4];
    const lengths = [0.5, 11, 37];
    for (let step = -60; step <= 60; step += 1) {
      const knowns = bearings.map((bearing, i) => {
        const away = lengths[i] ?? 0;
        return { at: pointAtAzimuth(feature, bearing, away), cable: away + step * 1e-10 };
      });
      const { area, outline } = reach(knowns);
      expect(area).toBeLessThan(1e-15);
      for (const p of outline) expect(distance(p, feature)).toBeLessThan(5e-8);
    }
  });
});
