// Where a mark lies in its yard cannot hang on how the yard lies on the paper: the whole sample site is moved, turned,
// mirrored and scaled by changing its measurements only, and everything derived has to go along.

import { readFileSync } from 'node:fs';
import type { Point } from '@footmark/geometry';
import { derive, moveThings, openSite, openSiteValue, type Site, type Spot } from '@footmark/site';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

/** Scaled by `scale`, mirrored in the y axis, turned clockwise by `turn` (rad), then moved. */
type Similarity = { scale: number; mirrored: boolean; turn: number; dx: number; dy: number };

const TURN = 2 * Math.PI;
/** Metres: the least-squares place of a point with three tapes is found to about a micrometre. */
const SAME_M = 1e-5;

/** A sample without its place on the earth, which does not move with the paper. */
function sample(name: string): Site {
  const opened = openSite(
    readFileSync(new URL(`../../packages/site/samples/${name}.json`, import.meta.url), 'utf8'),
  );
  if (!opened.ok) throw new Error(JSON.stringify(opened.failure));
  return { ...opened.site, frame: { north: { by: 'assumed' }, control: [] } };
}

function movedPoint({ scale, mirrored, turn, dx, dy }: Similarity, p: Point): Point {
  const [x, y] = [scale * (mirrored ? -p.x : p.x), scale * p.y];
  return {
    x: x * Math.cos(turn) + y * Math.sin(turn) + dx,
    y: -x * Math.sin(turn) + y * Math.cos(turn) + dy,
  };
}

function movedAzimuth({ mirrored, turn }: Similarity, azimuth: number): number {
  const moved = ((((mirrored ? -azimuth : azimuth) + turn) % TURN) + TURN) % TURN;
  return moved < TURN ? moved : 0;
}

function movedSpot(by: Similarity, spot: Spot): Spot {
  const hand = by.mirrored ? -1 : 1;
  switch (spot.by) {
    case 'finger':
    case 'coordinates':
      return { ...spot, ...movedPoint(by, spot) };
    case 'tapes':
      return {
        ...spot,
        tapes: spot.tapes.map((t) => ({ ...t, distance: by.scale * t.distance })),
        side: by.mirrored ? (spot.side === 'left' ? 'right' : 'left') : spot.side,
      };
    case 'offset':
      return { ...spot, along: by.scale * spot.along, out: hand * by.scale * spot.out };
    case 'bearing':
    case 'course':
      return { ...spot, azimuth: movedAzimuth(by, spot.azimuth), distance: by.scale * spot.distance };
    case 'turn':
      return { ...spot, turn: hand * spot.turn, distance: by.scale * spot.distance };
    case 'arc':
      return {
        by: 'arc',
        radius: by.scale * spot.radius,
        sweep: hand * spot.sweep,
        chord: spot.chord === null ? null : movedAzimuth(by, spot.chord),
      };
    case 'between':
    case 'at':
      return spot;
  }
}

function movedSite(by: Similarity, site: Site): Site {
  const s = by.scale;
  const spotsOf = <V extends { spot: Spot }>(vertices: readonly V[]): V[] =>
    vertices.map((v) => ({ ...v, spot: movedSpot(by, v.spot) }));
  return {
    ...site,
    tape: { length: s * site.tape.length, sigma: s * site.tape.sigma },
    entryReach: s * site.entryReach,
    features: site.features.map((feature) => {
      const fields: Record<string, unknown> = { ...feature.fields };
      for (const name of ['diameter', 'trunkDiameter']) {
        if (typeof fields[name] === 'number') fields[name] = s * fields[name];
      }
      if (Array.isArray(fields.stemDiameters)) fields.stemDiameters = fields.stemDiameters.map((d) => s * d);
      const closing = feature.closing === undefined ? {} : { closing: movedSpot(by, feature.closing) };
      const vertices = spotsOf(feature.vertices);
      return { ...feature, ...closing, fields, vertices } as Site['features'][number]; // same kind
    }),
    paths: site.paths.map((path) => ({
      ...path,
      bendRadius: s * path.bendRadius,
      vertices: spotsOf(path.vertices),
      stretches: path.stretches.map((stretch) => ({ ...stretch, from: s * stretch.from })),
    })),
    runs: site.runs.map((run) => ({
      ...run,
      zero: {
        ...run.zero,
        counter: s * run.zero.counter,
        ...(run.zero.at === 'rim'
          ? { riser: s * run.zero.riser, sweepRadius: s * run.zero.sweepRadius }
          : {}),
      } as typeof run.zero, // the same kind of zero
      readings: run.readings.map((reading) => ({ ...reading, counter: s * reading.counter })),
    })),
  };
}

// Some limits are lengths of people and tapes and do not scale (reference points within 0.15 m count as one, and two of the
// sample's are 0.18 m apart), so the yard stays of its size.
const similarity: fc.Arbitrary<Similarity> = fc.record({
  scale: fc.double({ min: 0.9, max: 2, noNaN: true }),
  mirrored: fc.boolean(),
  turn: fc.double({ min: 0, max: TURN, noNaN: true, maxExcluded: true }),
  dx: fc.double({ min: -1000, max: 1000, noNaN: true }),
  dy: fc.double({ min: -1000, max: 1000, noNaN: true }),
});

describe.each(['rear-alley', 'front-terrace'])(
  'the whole %s sample, moved, turned, mirrored and scaled',
  (name) => {
    const site = sample(name);
    const before = derive(site);

    it('carries every point, mark, tie, clearance and finding with it', () => {
      fc.assert(
        fc.property(similarity, (by) => {
          const moved = movedSite(by, site);
          expect(openSiteValue(moved).ok).toBe(true);
          const after = derive(moved);

          for (const [key, { at, measured }] of before.points) {
            expectSame(after.points.get(key)?.at, movedPoint(by, at), key);
            expect(after.points.get(key)?.measured).toBe(measured);
          }
          for (const [i, mark] of before.marks.entries()) {
            const then = after.marks[i];
            expect(then?.label).toBe(mark.label);
            const [was, is] = [mark.place, then?.place];
            if (was === null || is === null || is === undefined) {
              expect(is).toBe(was);
              continue;
            }
            expectSame(is.at, movedPoint(by, was.at), mark.label);
            expect(Math.abs(is.station - by.scale * was.station)).toBeLessThan(SAME_M);
            const swing = is.flow - movedAzimuth(by, was.flow);
            expect(Math.abs(Math.sin(swing / 2))).toBeLessThan(SAME_M);

            expect(is.ties === null).toBe(was.ties === null);
            if (is.ties !== null && was.ties !== null) {
              expect(Math.abs(is.ties.worstAxis - by.scale * was.ties.worstAxis)).toBeLessThan(SAME_M);
              const names = (ties: typeof is.ties) => ties?.pair.map((t) => t.from.key).sort();
              // the sample has no two pairs that are equally good, so the same pair is chosen
              expect(names(is.ties), mark.label).toEqual(names(was.ties));
              expect(is.ties.check?.from.key).toBe(was.ties.check?.from.key);
              expect(Math.abs(is.ties.cutAngle - was.ties.cutAngle)).toBeLessThan(1e-4);
              if (is.ties.pair[0].from.key === was.ties.pair[0].from.key) {
                expect(is.ties.side === was.ties.side).toBe(!by.mirrored);
              }
            }
            expect(is.clearances.map((c) => c.kind)).toEqual(was.clearances.map((c) => c.kind));
            for (const [j, clearance] of was.clearances.entries()) {
              const then = is.clearances[j]?.distance ?? Number.NaN;
              expect(Math.abs(then - by.scale * clearance.distance), clearance.kind).toBeLessThan(SAME_M);
            }
          }
          expect(after.findings.map((f) => [f.code, f.at])).toEqual(
            before.findings.map((f) => [f.code, f.at]),
          );
        }),
        { numRuns: 60, seed: 20260414 },
      );
    });

    it('keeps every taped point with its house when all of it is moved by hand', () => {
      const by = { x: 0, y: 20 };
      const ids = [...site.features, ...site.paths].map((thing) => thing.id);
      const after = derive(moveThings(site, { ids, by }));
      for (const [key, { at }] of before.points)
        expectSame(after.points.get(key)?.at, { x: at.x + by.x, y: at.y + by.y }, key);
    });
  },
);

function expectSame(found: Point | undefined, wanted: Point, name: string): void {
  const away = Math.hypot((found?.x ?? Number.NaN) - wanted.x, (found?.y ?? Number.NaN) - wanted.y);
  expect(away, name).toBeLessThan(SAME_M);
}
