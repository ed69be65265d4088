import { describe, expect, it } from 'vitest';
import type { Feature } from '../document/feature';
import type { Spot } from '../document/spot';
import { DEGREE, ref, thing, typed, yard } from '../testing/yard';
import { offsetPoint, resolvePoints } from './resolvePoints';

const post = (id: string, spot: Spot) => thing(id, 'reference-point', [spot]);

/** Where `x` comes to, measured from posts A (0, 0), B (10, 0) and C (0, 10). */
function placed(spot: Spot, ...more: readonly Feature[]) {
  const posts = [post('A', typed(0, 0)), post('B', typed(10, 0)), post('C', typed(0, 10))];
  const { points, findings } = resolvePoints(yard({ features: [...posts, ...more, post('x', spot)] }));
  const point = points.get('x/a');
  if (point === undefined) throw new Error('x has no place');
  return { ...point, findings };
}

function expectAt(point: { at: { x: number; y: number } } | undefined, x: number, y: number): void {
  expect(point?.at.x).toBeCloseTo(x, 9);
  expect(point?.at.y).toBeCloseTo(y, 9);
}

const tapes = (side: 'left' | 'right', ...pulls: readonly (readonly [string, number])[]): Spot => ({
  by: 'tapes',
  tapes: pulls.map(([of, distance]) => ({ from: ref(of), distance })),
  side,
});

describe('resolvePoints', () => {
  it('takes a point by eye as assumed and a typed one as measured', () => {
    expect(placed({ by: 'finger', x: 3, y: -4 })).toMatchObject({ at: { x: 3, y: -4 }, measured: false });
    expect(placed(typed(3, -4))).toMatchObject({ at: { x: 3, y: -4 }, measured: true });
  });

  it('measures an offset along a line and square off it, right positive', () => {
    const north = placed({ by: 'offset', from: ref('A'), to: ref('C'), along: 3, out: 2 });
    expectAt(north, 2, 3);
    expect(north.measured).toBe(true);
    expectAt(placed({ by: 'offset', from: ref('A'), to: ref('B'), along: 4, out: 1.5 }), 4, -1.5);
    expectAt(placed({ by: 'offset', from: ref('A'), to: ref('B'), along: -2, out: -3 }), -2, 3);
  });

  it('keeps a point at the start of a line without length, as assumed', () => {
    const twin = post('twin', typed(0, 0));
    const { at, measured, findings } = placed(
      { by: 'offset', from: ref('A'), to: ref('twin'), along: 3, out: 2 },
      twin,
    );
    expect(at).toEqual({ x: 0, y: 0 });
    expect(measured).toBe(false);
    expect(findings).toMatchObject([
      { code: 'line-has-no-length', severity: 'error', values: { a: 'A', b: 'twin' } },
    ]);
  });

  it('measures azimuth and distance from another point', () => {
    expectAt(placed({ by: 'bearing', from: ref('B'), azimuth: 90 * DEGREE, distance: 5 }), 15, 0);
    expectAt(
      placed({ by: 'bearing', from: ref('C'), azimuth: 210 * DEGREE, distance: 2 }),
      -1,
      10 - Math.sqrt(3),
    );
  });

  it('divides a line, also beyond its ends, and is as sure as both of them', () => {
    const middle = placed({ by: 'between', from: ref('B'), to: ref('C'), fraction: 0.25 });
    expectAt(middle, 7.5, 2.5);
    expect(middle.measured).toBe(true);
    expectAt(placed({ by: 'between', from: ref('A'), to: ref('B'), fraction: -0.5 }), -5, 0);
    const guess = post('guess', { by: 'finger', x: 4, y: 0 });
    expect(placed({ by: 'between', from: ref('A'), to: ref('guess'), fraction: 0.5 }, guess).measured).toBe(
      false,
    );
  });

  it('takes over the place of another point, and how sure it is', () => {
    expect(placed({ by: 'at', point: ref('B') })).toMatchObject({ at: { x: 10, y: 0 }, measured: true });
    const guess = post('guess', { by: 'finger', x: 4, y: 1 });
    expect(placed({ by: 'at', point: ref('guess') }, guess)).toMatchObject({
      at: { x: 4, y: 1 },
      measured: false,
    });
  });

  it('goes straight on from its own leg where it meets the end of another thing’s curve', () => {
    const curb = thing('curb', 'curb', [
      typed(0, 0),
      { by: 'arc', radius: 10, sweep: 90 * DEGREE, chord: 45 * DEGREE },
    ]);
    const fence = thing('fence', 'fence', [
      typed(10, 0),
      { by: 'at', point: ref('curb', 'b') },
      { by: 'turn', turn: 0, distance: 10 },
    ]);
    const { points } = resolvePoints(yard({ features: [curb, fence] }));
    expectAt(points.get('fence/b'), 10, 10);
    expectAt(points.get('fence/c'), 10, 20);
    expect(points.get('fence/b')).toMatchObject({ is: 'curb/b', anchor: null });
  });

  it('knows what each point hangs on', () => {
    const by = { by: 'finger', x: 4, y: 0 } as const;
    const guess = post('guess', by);
    const anchorOf = (spot: Spot) => placed(spot, guess).anchor;
    expect(anchorOf(typed(1, 1))).toBeNull();
    expect(anchorOf(by)).toBe('x/a');
    expect(anchorOf({ by: 'at', point: ref('guess') })).toBe('guess/a');
    expect(anchorOf({ by: 'bearing', from: ref('guess'), azimuth: 0, distance: 5 })).toBe('guess/a');
    expect(anchorOf({ by: 'offset', from: ref('A'), to: ref('B'), along: 1, out: 1 })).toBeNull();
    expect(anchorOf({ by: 'between', from: ref('A'), to: ref('guess'), fraction: 0.5 })).toBe('several');
    expect(anchorOf(tapes('left', ['A', 3], ['guess', 3]))).toBe('several');
    expect(anchorOf(tapes('left', ['A', 1], ['B', 1]))).toBe('x/a');
  });

  it('follows courses and turns from vertex to vertex', () => {
    const outline = thing('house', 'building', [
      typed(1, 1),
      { by: 'course', azimuth: 0, distance: 5 },
      { by: 'turn', turn: 90 * DEGREE, distance: 2 },
      { by: 'turn', turn: -45 * DEGREE, distance: Math.SQRT2 },
      { by: 'course', azimuth: 180 * DEGREE, distance: 6 },
    ]);
    const { points } = resolvePoints(yard({ features: [outline] }));
    expectAt(points.get('house/b'), 1, 6);
    expectAt(points.get('house/c'), 3, 6);
    expectAt(points.get('house/d'), 4, 7);
    expectAt(points.get('house/e'), 4, 1);
  });

  it('takes the corner that a measured outline was put down by as sure as the outline', () => {
    const finger = { by: 'finger', x: 1, y: 1 } as const;
    const course = { by: 'course', azimuth: 0, distance: 5 } as const;
    const measured = (...spots: readonly Spot[]) => {
      const { points } = resolvePoints(yard({ features: [thing('w', 'fence', spots)] }));
      return [...points.values()].map((p) => p.measured);
    };
    expect(measured(finger, course)).toEqual([true, true]);
    expect(measured(finger, typed(2, 2))).toEqual([false, true]);
    expect(measured(typed(0, 0), finger, course)).toEqual([true, false, true]);
  });

  describe('with two tapes', () => {
    it('takes the crossing on the side that was chosen, seen from the first to the second', () => {
      expectAt(placed(tapes('left', ['A', 6], ['B', 8])), 3.6, 4.8);
      expectAt(placed(tapes('right', ['A', 6], ['B', 8])), 3.6, -4.8);
      expectAt(placed(tapes('right', ['B', 8], ['A', 6])), 3.6, 4.8);
    });

    it('stays on its side of a house that is moved or turned under it', () => {
      const spot = tapes('left', ['A', 8], ['B', 8]);
      const site = (shift: number) =>
        yard({ features: [post('A', typed(0, shift)), post('B', typed(10, shift)), post('x', spot)] });
      expectAt(resolvePoints(site(20)).points.get('x/a'), 5, 20 + Math.sqrt(39));
      const turned = yard({ features: [post('A', typed(0, 0)), post('B', typed(0, -10)), post('x', spot)] });
      expectAt(resolvePoints(turned).points.get('x/a'), Math.sqrt(39), -5);
    });

    it('counts a tape from a trunk or a pole from its near face, as ties do', () => {
      const tree = thing('tree', 'tree', [typed(5, 8)], { trunkDiameter: 0.9 });
      const pole = thing('pole', 'pole', [typed(-6, 9)], { diameter: 0.4 });
      const pulls = [
        ['tree', Math.hypot(5, 6) - 0.45],
        ['pole', Math.hypot(6, 5) - 0.2],
      ] as const;
      expectAt(placed(tapes('right', ...pulls), tree, pole), 0, 14);
      const third = placed(tapes('right', ...pulls, ['A', 14]), tree, pole);
      expect(third.at.y).toBeCloseTo(14, 6);
      expect(Math.max(...(third.tapeResiduals ?? [1]).map(Math.abs))).toBeLessThan(1e-6);
    });

    it('says by how much the tapes are too short, and lies in the middle of the gap', () => {
      const { at, measured, findings } = placed(tapes('left', ['A', 4], ['B', 5]));
      expect([at, measured]).toEqual([{ x: 4.5, y: 0 }, false]);
      expect(findings).toMatchObject([
        {
          code: 'tapes-too-short',
          severity: 'error',
          at: { id: 'x', vertex: 'a' },
          values: { a: 'A', b: 'B' },
        },
      ]);
      expect(findings[0]?.values).toHaveProperty('gap', 1);
    });

    it('says by how much one tape is too long', () => {
      const { findings, measured, at } = placed(tapes('left', ['A', 20], ['B', 5]));
      expect([at, measured]).toEqual([{ x: 17.5, y: 0 }, false]);
      expect(findings).toMatchObject([{ code: 'tapes-too-long', values: { gap: 5 } }]);
    });

    it('refuses two tapes from one place', () => {
      const twin = post('twin', typed(0, 0));
      const { findings, measured } = placed(tapes('left', ['A', 5], ['twin', 5]), twin);
      expect(measured).toBe(false);
      expect(findings).toMatchObject([{ code: 'tapes-same-place', values: { a: 'A', b: 'twin' } }]);
    });

    it('warns of a cut under 30° and over 150°, and not within', () => {
      const cutFrom = (y: number) => {
        const r = Math.hypot(5, y);
        return placed(tapes('left', ['A', r], ['B', r])).findings;
      };
      // seen from (5, y) the base of 10 spans 2·atan(5/y)
      expect(cutFrom(5 / Math.tan(14 * DEGREE))).toMatchObject([{ code: 'weak-cut', severity: 'warning' }]);
      expect(cutFrom(5 / Math.tan(16 * DEGREE))).toEqual([]);
      expect(cutFrom(5 / Math.tan(74 * DEGREE))).toEqual([]);
      expect(cutFrom(5 / Math.tan(76 * DEGREE))).toMatchObject([{ code: 'weak-cut' }]);
    });
  });

  describe('with three and more tapes', () => {
    const toX = { A: 5, B: Math.hypot(7, 4), C: Math.hypot(3, 6) };

    it('meets tapes that agree', () => {
      const found = placed(tapes('left', ['A', toX.A], ['B', toX.B], ['C', toX.C]));
      expect(found.at.x).toBeCloseTo(3, 6);
      expect(found.at.y).toBeCloseTo(4, 6);
      expect(found.measured).toBe(true);
      expect(Math.max(...(found.tapeResiduals ?? [1]).map(Math.abs))).toBeLessThan(1e-6);
      expect(found.findings).toEqual([]);
    });

    it('names the tape that does not fit the others', () => {
      const d = post('D', typed(10, 10));
      const found = placed(
        tapes('left', ['A', toX.A], ['B', toX.B], ['C', toX.C + 0.5], ['D', Math.hypot(7, 6)]),
        d,
      );
      expect(found.findings).toMatchObject([
        { code: 'tapes-disagree', severity: 'warning', values: { worst: 'C' } },
      ]);
      expect(found.tapeResiduals?.[2]).toBeGreaterThan(0.1);
    });

    // references on one line leave two places that fit alike
    it('takes the side that was chosen where the tapes tell none', () => {
      const m = post('M', typed(4, 0));
      const pulls = [
        ['A', 5],
        ['M', Math.hypot(1, 4)],
        ['B', Math.hypot(7, 4)],
      ] as const;
      expect(placed(tapes('left', ...pulls), m).at.y).toBeCloseTo(4, 6);
      expect(placed(tapes('right', ...pulls), m).at.y).toBeCloseTo(-4, 6);
    });

    it('finds the place by another pair when the first two are in line with it, or do not meet', () => {
      const far = post('far', typed(-20, 0.1));
      const found = placed(
        tapes('left', ['far', Math.hypot(26, 0.1)], ['A', 6], ['C', Math.hypot(6, 10)]),
        far,
      );
      expect(found.at.x).toBeCloseTo(6, 4);
      expect(found.at.y).toBeCloseTo(0, 2);
      expect(found.findings).toEqual([]);
      const short = placed(tapes('left', ['A', 4.99], ['B', 4.99], ['C', Math.hypot(5, 10)]));
      expect(short.at.x).toBeCloseTo(5, 1);
      expect(short.measured).toBe(true);
    });

    it('warns when they all run nearly one way, and by how much that leaves the point unsure', () => {
      const m = post('M', typed(5, 0));
      const toPoint = (y: number) =>
        tapes('left', ['A', Math.hypot(15, y)], ['M', Math.hypot(10, y)], ['B', Math.hypot(5, y)]);
      const weak = placed(toPoint(0.6), m);
      expect(weak.measured).toBe(true);
      expect(weak.findings).toMatchObject([{ code: 'tapes-one-way', severity: 'warning' }]);
      expect(placed(toPoint(9), m).findings).toEqual([]);
      const inLine = placed(toPoint(0), m);
      expect(inLine.findings).toMatchObject([{ code: 'tapes-one-way' }]);
    });
  });

  it('resolves points measured from things that come later in the file', () => {
    const { points } = resolvePoints(
      yard({
        features: [
          post('w', { by: 'bearing', from: ref('v'), azimuth: 0, distance: 1 }),
          post('v', { by: 'between', from: ref('u'), to: ref('t'), fraction: 0.5 }),
          post('u', { by: 'at', point: ref('t') }),
          post('t', typed(7, 7)),
        ],
      }),
    );
    expectAt(points.get('w/a'), 7, 8);
  });

  it('a turn waits for both vertices before it', () => {
    // the first feature asks for the turn, whose first vertex is only known from the last
    const { points } = resolvePoints(
      yard({
        features: [
          post('asks', { by: 'at', point: ref('wall', 'c') }),
          thing('wall', 'fence', [
            { by: 'at', point: ref('late') },
            typed(0, 5),
            { by: 'turn', turn: 90 * DEGREE, distance: 2 },
          ]),
          post('late', typed(0, 0)),
        ],
      }),
    );
    expectAt(points.get('wall/c'), 2, 5);
    expectAt(points.get('asks/a'), 2, 5);
  });

  it('leaves out points that are measured from themselves, and places the others', () => {
    const { points } = resolvePoints(
      yard({
        features: [
          post('p', { by: 'at', point: ref('q') }),
          post('q', { by: 'at', point: ref('p') }),
          post('s', typed(1, 1)),
        ],
      }),
    );
    expect([...points.keys()]).toEqual(['s/a']);
  });

  it('follows a chain of ten thousand points laid backwards', () => {
    const count = 10_000;
    const features = Array.from({ length: count }, (_, i) =>
      post(`n${i}`, i === count - 1 ? typed(1, 2) : { by: 'at', point: ref(`n${i + 1}`) }),
    );
    expect(resolvePoints(yard({ features })).points.get('n0/a')?.at).toEqual({ x: 1, y: 2 });
  });
});

describe('offsetPoint', () => {
  it('is where the line says, at any heading', () => {
    const p = offsetPoint({ x: 1, y: 1 }, { x: 4, y: 5 }, 5, 5);
    expect(p.x).toBeCloseTo(8, 12); // (4, 5) and on by 5 to the right of (3, 4)/5
    expect(p.y).toBeCloseTo(2, 12);
  });
});
