import { distance, type Point, rotate } from '@footmark/geometry';
import { describe, expect, it } from 'vitest';
import { derive } from '../derive/derive';
import { resolvePoints } from '../derive/resolvePoints';
import type { Feature } from '../document/feature';
import { openSiteValue } from '../document/openSite';
import { pointOwners, refKey } from '../document/pointOwners';
import type { Site } from '../document/site';
import type { Spot } from '../document/spot';
import { find, foundYard, given } from '../testing/foundYard';
import { DEGREE, pipe, ref, square, thing, yard } from '../testing/yard';
import { rotateThings } from './thingEdits';

const ORIGIN: Point = { x: 0, y: 0 };
const places = (site: Site) => resolvePoints(site).points;
const finger = (x: number, y: number): Spot => ({ by: 'finger', x, y });

/** A house of 10 m and, each a thing of its own, points measured from it in every way; a walk around it in every kind of leg. */
function homestead(): Site {
  const [a, b] = [ref('house', 'a'), ref('house', 'b')];
  const measured: Record<string, Spot> = {
    offset: { by: 'offset', from: a, to: b, along: 10, out: -5 },
    bearing: { by: 'bearing', from: b, azimuth: 340 * DEGREE, distance: 3 },
    tapes: {
      by: 'tapes',
      tapes: [
        { from: a, distance: 8 },
        { from: b, distance: 7 },
      ],
      side: 'right',
    },
    between: { by: 'between', from: a, to: ref('bearing'), fraction: 0.25 },
    at: { by: 'at', point: ref('tapes') },
  };
  const walk = thing('walk', 'easement', [
    { by: 'at', point: ref('offset') },
    { by: 'course', azimuth: 80 * DEGREE, distance: 4 },
    { by: 'turn', turn: 30 * DEGREE, distance: 5 },
    { by: 'arc', radius: 6, sweep: -50 * DEGREE, chord: null },
    { by: 'arc', radius: 3, sweep: 200 * DEGREE, chord: 350 * DEGREE },
  ]);
  const closing = { by: 'course', azimuth: 200 * DEGREE, distance: 6 } as const;
  return yard({
    features: [
      square('house', 'building', 0, 0, 10),
      ...Object.entries(measured).map(([id, spot]) => thing(id, 'reference-point', [spot])),
      { ...walk, closing, balance: 'compass' } as Feature,
    ],
    paths: [pipe('drain', [{ by: 'at', point: ref('house', 'c') }, finger(20, 30)])],
  });
}

function expectTurned(before: Site, after: Site, ids: readonly string[], about: Point, angle: number): void {
  for (const owner of pointOwners(before).filter((o) => ids.includes(o.id))) {
    for (const v of owner.vertices) {
      const key = refKey({ of: owner.id, at: v.id });
      const [was, is] = [places(before).get(key)?.at, places(after).get(key)?.at];
      if (was === undefined || is === undefined) expect.fail(`${key} has no place`);
      expect(distance(is, rotate(was, -angle, about)), key).toBeLessThan(1e-9);
    }
  }
  const opened = openSiteValue(after);
  if (!opened.ok) expect.fail(JSON.stringify(opened.failure));
}

describe('rotateThings', () => {
  it('turns a point once that is measured from a house that turns with it', () => {
    const site = homestead();
    expect(places(site).get('offset/a')?.at).toEqual({ x: expect.closeTo(10, 9), y: expect.closeTo(5, 9) });
    const ids = ['house', 'offset'];
    const turned = rotateThings(site, { ids, about: ORIGIN, angle: 90 * DEGREE, places: places(site) });
    // a quarter to the right about the origin takes (10, 5) to (5, −10)
    expect(places(turned).get('offset/a')?.at).toEqual({
      x: expect.closeTo(5, 9),
      y: expect.closeTo(-10, 9),
    });
  });

  it.each([12, -97.5, 180, 359])(
    'turns a whole yard by %d° as one, in any order, with its measurements',
    (deg) => {
      const site = homestead();
      const about = { x: 3, y: -2 };
      const ids = pointOwners(site).map((o) => o.id);
      for (const order of [ids, ids.toReversed()]) {
        const turned = rotateThings(site, { ids: order, about, angle: deg * DEGREE, places: places(site) });
        expectTurned(site, turned, ids, about, deg * DEGREE);
        const kinds = (of: Site) => pointOwners(of).flatMap((o) => o.vertices.map((v) => v.spot.by));
        expect(kinds(turned)).toEqual(kinds(site));
      }
    },
  );

  it('puts points by eye that are measured from things that do not turn, and leaves those things', () => {
    const site = homestead();
    const ids = ['offset', 'between', 'at', 'walk', 'drain'];
    const turned = rotateThings(site, { ids, about: ORIGIN, angle: 40 * DEGREE, places: places(site) });
    expectTurned(site, turned, ids, ORIGIN, 40 * DEGREE);
    const by = (id: string) => pointOwners(turned).find((o) => o.id === id)?.vertices[0]?.spot.by;
    expect(['offset', 'between', 'at', 'walk', 'drain'].map(by)).toEqual([
      'finger',
      'finger',
      'finger',
      'at',
      'finger',
    ]);
    expect(turned.features[0]).toBe(site.features[0]);
    expect(turned.features.find((f) => f.id === 'tapes')).toBe(site.features.find((f) => f.id === 'tapes'));
  });
});

describe('what crews found', () => {
  const finds = [
    find({ id: 'f1', given, where: { by: 'paint', along: 2, right: 0.5 } }),
    find({ id: 'f2', given, where: { by: 'finger', x: 5, y: -1 } }),
  ];
  const found = (site: Site) => derive(site).found.map(({ at }) => at);

  it('turns with the things that its paint was taped from, and stays as far from its mark', () => {
    const site = foundYard(finds);
    const ids = pointOwners(site).map((o) => o.id);
    const about = { x: 3, y: 7 };
    const turned = rotateThings(site, { ids, about, angle: 90 * DEGREE, places: places(site) });
    expect(openSiteValue(turned).ok).toBe(true);
    const expected = found(site).map((at) => at && rotate(at, -90 * DEGREE, about));
    for (const [i, at] of found(turned).entries()) {
      expect(at?.x).toBeCloseTo(expected[i]?.x ?? Number.NaN, 9);
      expect(at?.y).toBeCloseTo(expected[i]?.y ?? Number.NaN, 9);
    }
    const [before, after] = [site, turned].map((s) => derive(s).found[0]?.off);
    expect(after?.along).toBeCloseTo(before?.along ?? Number.NaN, 9);
    expect(after?.across).toBeCloseTo(before?.across ?? Number.NaN, 9);
  });

  it('stays where it is when other things turn', () => {
    const site = foundYard(finds);
    const turned = rotateThings(site, { ids: ['house'], about: ORIGIN, angle: 1, places: places(site) });
    expect(turned.asFound).toBe(site.asFound);
  });
});

describe('paint beside a mark', () => {
  it('turns with the pipe that the mark is on', () => {
    const yard = foundYard();
    const [run] = yard.runs;
    if (run === undefined) return expect.fail('the yard has a run');
    const [first, ...others] = run.readings;
    if (first === undefined) return expect.fail('the run has readings');
    const offset = { azimuth: 0, distance: 2 };
    const site = { ...yard, runs: [{ ...run, readings: [{ ...first, offset }, ...others] }] };
    const ids = pointOwners(site).map((o) => o.id);
    const about = { x: 3, y: 7 };
    const turned = rotateThings(site, { ids, about, angle: 90 * DEGREE, places: places(site) });
    const [before, after] = [site, turned].map((s) => derive(s).marks[0]?.place?.paint?.at);
    const expected = before && rotate(before, -90 * DEGREE, about);
    expect(after).toEqual({
      x: expect.closeTo(expected?.x ?? Number.NaN, 9),
      y: expect.closeTo(expected?.y ?? Number.NaN, 9),
    });
    const house = rotateThings(site, { ids: ['house'], about, angle: 1, places: places(site) });
    expect(house.runs).toBe(site.runs);
  });
});
