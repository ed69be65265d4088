import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { azimuthBetween, deflectionBetween, pointAtAzimuth, radians } from './angle';
import { flattenPath, slicePath } from './flattenPath';
import { locate, locateMany } from './locate';
import { type PathLine, type PathVertex, pathLength, pathLine, stationOfVertex } from './pathLine';
import { distance, interpolate, type Point, rotate } from './point';
import { nearestOnPolyline, polylineLength } from './polyline';
import { stationOf } from './stationOf';

/** Even over the range in steps of a millionth, unlike `fc.double`, whose values crowd round 0. */
const between = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 1e6), max: Math.round(max * 1e6) }).map((n) => n / 1e6);

const at = (x: number, y: number): Point => ({ x, y });
const vertex = (x: number, y: number, bendRadius = 0): PathVertex => ({ point: at(x, y), bendRadius });

function built(vertices: readonly PathVertex[]): PathLine {
  const line = pathLine(vertices);
  if (!line.ok) throw new Error(line.code);
  return line.value;
}

/** North 10, a quarter turn right of radius 2, east 10. */
const elbow = built([vertex(0, 0), vertex(0, 10, 2), vertex(10, 10)]);

/** Paths of 1 to 7 legs, turns of at most 150°, radii that often do not fit. */
const paths = fc
  .array(
    fc.record({
      turn: between(-150, 150),
      length: between(0.5, 20),
      bendRadius: fc.oneof(fc.constant(0), between(0.05, 10)),
    }),
    { minLength: 1, maxLength: 7 },
  )
  .map((legs) => {
    const vertices: PathVertex[] = [vertex(0, 0)];
    let azimuth = 0;
    let point = at(0, 0);
    for (const leg of legs) {
      azimuth += radians(leg.turn);
      point = pointAtAzimuth(point, azimuth, leg.length);
      vertices.push({ point, bendRadius: leg.bendRadius });
    }
    return vertices;
  });

describe('pathLine', () => {
  it('replaces a corner by a tangent arc', () => {
    expect(elbow.elements.map((e) => e.kind)).toEqual(['straight', 'arc', 'straight']);
    expect(pathLength(elbow)).toBeCloseTo(16 + Math.PI, 12);
    expect(stationOfVertex(elbow, 0)).toBe(0);
    expect(stationOfVertex(elbow, 1)).toBeCloseTo(8 + Math.PI / 2, 12);
    expect(stationOfVertex(elbow, 2)).toBe(pathLength(elbow));
    expect(() => stationOfVertex(elbow, 3)).toThrow(RangeError);
  });

  it('refuses what is no path', () => {
    expect(pathLine([])).toEqual({ ok: false, code: 'too-few-vertices', values: { count: 0 } });
    expect(pathLine([vertex(0, 0), vertex(5, 0), vertex(5, 5e-5)])).toEqual({
      ok: false,
      code: 'zero-length-leg',
      values: { leg: 1 },
    });
    expect(pathLine([vertex(0, 0), vertex(Number.NaN, 0)])).toMatchObject({ code: 'not-finite' });
    expect(pathLine([vertex(0, 0), vertex(1, 0, -1), vertex(1, 1)])).toMatchObject({
      code: 'negative-radius',
    });
  });

  it('reduces two bends that share a leg to half of it each, and lists them', () => {
    const line = built([vertex(0, 0), vertex(0, 50, 20), vertex(10, 50, 20), vertex(10, 0)]);
    expect(line.reducedBends).toEqual([1, 2]);
    expect(line.radii[1]).toBeCloseTo(5, 12);
    expect(line.elements.map((e) => e.kind)).toEqual(['straight', 'arc', 'arc', 'straight']);
  });

  it('lets a bend have what a small neighbour leaves of the leg', () => {
    const line = built([vertex(0, 0), vertex(0, 50, 20), vertex(10, 50, 1), vertex(10, 0)]);
    expect(line.reducedBends).toEqual([1]);
    expect(line.radii[1]).toBeCloseTo(9, 12);
    expect(line.radii[2]).toBe(1);
  });

  it('reduces a bend whose tangent is longer than an end leg', () => {
    const line = built([vertex(0, 0), vertex(0, 3, 5), vertex(50, 3)]);
    expect(line.reducedBends).toEqual([1]);
    expect(line.radii[1]).toBeCloseTo(3, 12);
    expect(stationOfVertex(line, 0)).toBe(0);
  });

  it('keeps corners sharp when straight, unbent or folded back', () => {
    const straight = built([vertex(0, 0), vertex(0, 5, 2), vertex(0, 9)]);
    expect([pathLength(straight), stationOfVertex(straight, 1)]).toEqual([9, 5]);
    expect(straight.reducedBends).toEqual([]);
    const folded = built([vertex(0, 0), vertex(0, 5, 2), vertex(0.001, 0)]);
    expect(pathLength(folded)).toBeCloseTo(10, 5);
    expect(folded.reducedBends).toEqual([1]);
  });

  it('is continuous in place and heading, and no longer than the drawn legs', () => {
    fc.assert(
      fc.property(paths, (vertices) => {
        const line = built(vertices);
        expect(pathLength(line)).toBeLessThanOrEqual(polylineLength(vertices.map((v) => v.point)) + 1e-9);
        line.elements.slice(1).forEach((element, i) => {
          const join = line.starts[i + 1] ?? Number.NaN;
          const before = locate(line, join - 1e-8);
          expect(distance(before.point, element.start)).toBeLessThan(1e-7);
          const sharp = line.vertexStations.some((s, v) => line.radii[v] === 0 && Math.abs(s - join) < 1e-8);
          if (!sharp) expect(Math.abs(deflectionBetween(before.azimuth, element.azimuth))).toBeLessThan(1e-3);
        });
        const last = vertices.at(-1)?.point ?? at(Number.NaN, 0);
        expect(distance(locate(line, pathLength(line)).point, last)).toBeLessThan(1e-8);
      }),
    );
  });

  it('is as long read backwards, with the same radii', () => {
    fc.assert(
      fc.property(paths, (vertices) => {
        const there = built(vertices);
        const back = built(vertices.toReversed());
        expect(pathLength(back)).toBeCloseTo(pathLength(there), 8);
        there.vertexStations.forEach((station, i) => {
          expect(stationOfVertex(back, vertices.length - 1 - i)).toBeCloseTo(pathLength(there) - station, 8);
        });
      }),
    );
  });

  it('scales, turns and mirrors with its vertices, also far from the origin', () => {
    const moves: readonly [number, (p: Point) => Point][] = [
      [1e-1, (p) => at(p.x * 1e-1, p.y * 1e-1)],
      [1e6, (p) => at(p.x * 1e6, p.y * 1e6)],
      [1, (p) => rotate(at(p.x + 1e6, p.y - 1e6), 1)],
      [1, (p) => at(-p.x, p.y)],
    ];
    fc.assert(
      fc.property(paths, between(0, 1), (vertices, share) => {
        const line = built(vertices);
        const place = locate(line, share * pathLength(line));
        for (const [k, move] of moves) {
          const moved = built(vertices.map((v) => ({ point: move(v.point), bendRadius: v.bendRadius * k })));
          expect(pathLength(moved) / k).toBeCloseTo(pathLength(line), 6);
          const found = locate(moved, share * pathLength(moved)).point;
          expect(distance(found, move(place.point)) / k).toBeLessThan(1e-6);
        }
      }),
    );
  });
});

describe('locate', () => {
  it('gives place, heading and leg, which changes in the middle of the bend', () => {
    expect(locate(elbow, 4)).toEqual({ point: at(0, 4), azimuth: 0, element: 0, leg: 0, beyond: 0 });
    const middle = locate(elbow, 8 + Math.PI / 2);
    expect(distance(middle.point, at(2 - Math.SQRT2, 8 + Math.SQRT2))).toBeLessThan(1e-12);
    expect(middle.azimuth).toBeCloseTo(Math.PI / 4, 12);
    expect([locate(elbow, 9).leg, middle.leg]).toEqual([0, 1]);
  });

  it('says how far off the line a station is', () => {
    expect(locate(elbow, -3)).toMatchObject({ point: at(0, 0), beyond: -3, leg: 0 });
    const past = locate(elbow, 21 + Math.PI);
    expect(past.beyond).toBeCloseTo(5, 12);
    expect(past.leg).toBe(1);
    expect(distance(past.point, at(10, 10))).toBeLessThan(1e-12);
    expect(() => locate(elbow, Number.NaN)).toThrow(RangeError);
  });

  it('gives many stations the same places as one by one', () => {
    fc.assert(
      fc.property(paths, fc.array(between(-5, 150)), (vertices, asked) => {
        const line = built(vertices);
        const into = new Float64Array(2 * asked.length);
        expect(locateMany(line, Float64Array.from(asked), into)).toBe(into);
        asked.forEach((station, i) => {
          expect({ x: into[2 * i], y: into[2 * i + 1] }).toEqual(locate(line, station).point);
        });
      }),
    );
    expect(() => locateMany(elbow, new Float64Array(3), new Float64Array(3))).toThrow(RangeError);
    expect([...locateMany(elbow, Float64Array.of(Number.NaN))]).toEqual([Number.NaN, Number.NaN]);
  });
});

describe('stationOf', () => {
  it('is positive to the right of the flow', () => {
    expect(stationOf(elbow, at(1.5, 4))).toEqual({ station: 4, offset: 1.5, distance: 1.5, point: at(0, 4) });
    expect(stationOf(elbow, at(-1.5, 4)).offset).toBe(-1.5);
    const outside = stationOf(elbow, at(0, 10));
    expect(outside.offset).toBeCloseTo(-(2 * Math.SQRT2 - 2), 12);
    expect(outside.station).toBeCloseTo(stationOfVertex(elbow, 1), 12);
  });

  it('past an end gives only the part square to the line as offset', () => {
    expect(stationOf(elbow, at(3, -4))).toMatchObject({ station: 0, offset: 3, distance: 5 });
  });

  it('keeps the whole outside of a sharp corner on one side', () => {
    const hairpin = built([vertex(0, 0), vertex(0, 10), vertex(1, 0)]);
    for (const p of [at(-1, 10.5), at(0, 12), at(1, 11)]) {
      const found = stationOf(hairpin, p);
      expect(found.point).toEqual(at(0, 10));
      expect(found.offset).toBeCloseTo(-distance(p, at(0, 10)), 12);
    }
  });

  it('is never farther than any sampled place, and finds it when laid on the line', () => {
    const coordinate = between(-40, 40);
    fc.assert(
      fc.property(paths, coordinate, coordinate, (vertices, x, y) => {
        const line = built(vertices);
        const found = stationOf(line, at(x, y));
        expect(distance(found.point, at(x, y))).toBeCloseTo(found.distance, 7);
        for (let k = 0; k <= 40; k += 1) {
          const sample = locate(line, (k / 40) * pathLength(line)).point;
          expect(found.distance).toBeLessThanOrEqual(distance(sample, at(x, y)) + 1e-7);
          expect(stationOf(line, sample).distance).toBeLessThan(1e-7);
        }
      }),
    );
  });

  it('gives back a station and offset set out from the middle of a long path', () => {
    const line = built([vertex(0, 0), vertex(0, 30, 5), vertex(20, 50, 5), vertex(20, 90)]);
    for (let station = 1; station < pathLength(line); station += 2.5) {
      for (const offset of [-1.2, 0.8]) {
        const { point, azimuth } = locate(line, station);
        const found = stationOf(line, pointAtAzimuth(point, azimuth + Math.PI / 2, offset));
        expect(found.station).toBeCloseTo(station, 9);
        expect(found.offset).toBeCloseTo(offset, 9);
      }
    }
  });
});

describe('flattenPath and slicePath', () => {
  it('stay within the sagitta of the curve, corners on it', () => {
    fc.assert(
      fc.property(paths, between(1e-3, 0.5), (vertices, sagitta) => {
        const line = built(vertices);
        const flat = flattenPath(line, sagitta);
        for (const p of flat) expect(stationOf(line, p).distance).toBeLessThan(1e-7);
        for (let k = 0; k <= 60; k += 1) {
          const p = locate(line, (k / 60) * pathLength(line)).point;
          expect(nearestOnPolyline(p, flat, false).distance).toBeLessThanOrEqual(sagitta + 1e-7);
        }
      }),
    );
    expect(() => flattenPath(elbow, 0)).toThrow(RangeError);
  });

  it('cut a stretch in either direction', () => {
    const slice = slicePath(elbow, 5, 8 + Math.PI / 2, 0.01);
    expect(slice[0]).toEqual(at(0, 5));
    expect(slice.at(-1)).toEqual(locate(elbow, 8 + Math.PI / 2).point);
    expect(slicePath(elbow, 8 + Math.PI / 2, 5, 0.01)).toEqual(slice.toReversed());
    expect(slicePath(elbow, 5, 5, 0.01)).toEqual([at(0, 5)]);
    expect(slicePath(elbow, -5, 4, 0.01)).toEqual([at(0, 0), at(0, 4)]);
  });

  it('miss nothing: two slices make the whole', () => {
    const [first, second] = [slicePath(elbow, 0, 9, 1e-4), slicePath(elbow, 9, pathLength(elbow), 1e-4)];
    expect(first.at(-1)).toEqual(second[0]);
    expect(polylineLength(first) + polylineLength(second)).toBeCloseTo(pathLength(elbow), 3);
    const heading = azimuthBetween(interpolate(at(0, 0), at(0, 1), 0), first[1] ?? at(9, 9));
    expect(heading).toBe(0);
  });
});
