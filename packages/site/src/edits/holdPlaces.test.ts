import { arcRingArea, distance, type Point } from '@footmark/geometry';
import { describe, expect, it } from 'vitest';
import { derive } from '../derive/derive';
import { resolvePoints } from '../derive/resolvePoints';
import type { Feature } from '../document/feature';
import { openSiteValue } from '../document/openSite';
import type { Site } from '../document/site';
import type { Spot } from '../document/spot';
import { DEGREE, ref, thing, typed, yard } from '../testing/yard';
import { splitLeg } from './splitLeg';
import { insertVertex, movePoint, removeVertex } from './vertexEdits';

const QUARTER = 90 * DEGREE;
const finger = (x: number, y: number): Spot => ({ by: 'finger', x, y });
const straightOn = (sweep: number): Spot => ({ by: 'arc', radius: 10, sweep, chord: null });

const places = (site: Site) => resolvePoints(site).points;

function at(site: Site, key: string): Point {
  return places(site).get(key)?.at ?? expect.fail(`${key} has no place`);
}

function expectHeld(before: Site, after: Site, keys: readonly string[]): void {
  for (const key of keys) expect(distance(at(after, key), at(before, key)), key).toBeLessThan(1e-9);
  const opened = openSiteValue(after);
  if (!opened.ok) expect.fail(JSON.stringify(opened.failure));
}

function areaOf(site: Site): number {
  const found = derive(site).features.get('lot');
  return found === undefined ? Number.NaN : Math.abs(arcRingArea(found.points, found.sweeps));
}

/** A north to b (10 m), round a quarter of R 10 m to c (10, 20), straight on to d (20, 20), a quarter left to e (30, 30), left to f. */
function chain(): Site {
  return yard({
    features: [
      thing('curb', 'curb', [
        finger(0, 0),
        { by: 'course', azimuth: 0, distance: 10 },
        straightOn(QUARTER),
        { by: 'turn', turn: 0, distance: 10 },
        straightOn(-QUARTER),
        { by: 'turn', turn: -QUARTER, distance: 4 },
      ]),
    ],
  });
}

/** A lot 20 m wide and 20 m deep whose north side, from b to c, is a semicircle outwards of R 10 m: 400 m² and 50π m². */
function lot(): Site {
  return yard({
    features: [
      thing('lot', 'boundary', [
        finger(0, 0),
        finger(0, 20),
        { by: 'arc', radius: 10, sweep: 180 * DEGREE, chord: QUARTER },
        finger(20, 0),
      ]),
    ],
  });
}

describe('a line with curves that go straight on, of which one point is moved, put in or taken out', () => {
  it('stays, also behind the curve that lost its direction', () => {
    const site = chain();
    expect(at(site, 'curb/d')).toEqual({ x: expect.closeTo(20, 9), y: expect.closeTo(20, 9) });
    const moved = movePoint(site, { ref: ref('curb', 'a'), to: { x: 1, y: 0 }, places: places(site) });
    expectHeld(site, moved, ['curb/b', 'curb/c', 'curb/d', 'curb/e', 'curb/f']);
    // the curve is held by its chord, so it still arrives as it did and what follows is still as measured
    expect(moved.features[0]?.vertices.map((v) => v.spot.by)).toEqual([
      'finger',
      'finger',
      'arc',
      'turn',
      'arc',
      'turn',
    ]);
  });

  it.each(['a', 'b', 'c', 'd', 'e', 'f'])('stays where it is when %s goes', (id) => {
    const site = chain();
    const others = ['a', 'b', 'c', 'd', 'e', 'f'].filter((v) => v !== id).map((v) => `curb/${v}`);
    const here = ref('curb', id);
    expectHeld(site, movePoint(site, { ref: here, to: { x: 3, y: 4 }, places: places(site) }), others);
    expectHeld(site, removeVertex(site, { ref: here, places: places(site) }), others);
    const vertex = { id: 'z', spot: finger(5, 7) };
    expectHeld(site, insertVertex(site, { ref: here, vertex, places: places(site) }), others);
  });
});

describe('a curve of a boundary', () => {
  it('is not straightened by a centimetre at its start', () => {
    const site = lot();
    expect(areaOf(site)).toBeCloseTo(400 + 50 * Math.PI, 9);
    const moved = movePoint(site, { ref: ref('lot', 'b'), to: { x: 0, y: 20.01 }, places: places(site) });
    expectHeld(site, moved, ['lot/a', 'lot/c', 'lot/d']);
    expect(areaOf(moved)).toBeCloseTo(400.1 + 50 * Math.PI, 3);
  });

  it('is still one of half a turn when its end is dragged', () => {
    const site = lot();
    const moved = movePoint(site, { ref: ref('lot', 'c'), to: { x: 24, y: 20 }, places: places(site) });
    expectHeld(site, moved, ['lot/a', 'lot/b', 'lot/d']);
    expect(at(moved, 'lot/c')).toEqual({ x: expect.closeTo(24, 9), y: expect.closeTo(20, 9) });
    expect(moved.features[0]?.vertices[2]?.spot).toMatchObject({
      by: 'arc',
      sweep: 180 * DEGREE,
      radius: 12,
    });
    expect(areaOf(moved)).toBeCloseTo(440 + 72 * Math.PI, 9);
  });

  it('is two of half its sweep when a point is put into it', () => {
    const site = lot();
    const split = splitLeg(site, { after: ref('lot', 'b'), id: 'z', places: places(site) });
    expectHeld(site, split, ['lot/a', 'lot/b', 'lot/c', 'lot/d']);
    expect(at(split, 'lot/z')).toEqual({ x: expect.closeTo(10, 9), y: expect.closeTo(30, 9) });
    expect(areaOf(split)).toBeCloseTo(areaOf(site), 9);
    expect(derive(split).features.get('lot')?.sweeps).toEqual([0, QUARTER, QUARTER, 0]);
  });

  it('that is split still has what follows as measured', () => {
    const site = chain();
    const split = splitLeg(site, { after: ref('curb', 'b'), id: 'z', places: places(site) });
    expectHeld(site, split, ['curb/a', 'curb/b', 'curb/c', 'curb/d', 'curb/e', 'curb/f']);
    const kinds = split.features[0]?.vertices.map((v) => v.spot.by);
    expect(kinds).toEqual(['finger', 'course', 'arc', 'arc', 'turn', 'arc', 'turn']);
  });

  it('whose ends come together is none', () => {
    const site = lot();
    const moved = movePoint(site, { ref: ref('lot', 'c'), to: { x: 0, y: 20 }, places: places(site) });
    expect(moved.features[0]?.vertices[2]?.spot).toEqual(finger(0, 20));
  });
});

describe('splitLeg', () => {
  it('puts a point into the middle of a straight leg, the closing side too', () => {
    const site = lot();
    const split = splitLeg(site, { after: ref('lot', 'd'), id: 'z', places: places(site) });
    expect(split.features[0]?.vertices.at(-1)).toEqual({ id: 'z', spot: finger(10, 0) });
    expectHeld(site, split, ['lot/a', 'lot/b', 'lot/c', 'lot/d']);
  });

  it('throws where no leg begins', () => {
    const args = { after: ref('curb', 'f'), id: 'z', places: places(chain()) };
    expect(() => splitLeg(chain(), args)).toThrow('curb/f');
  });
});

describe('an outline whose misclosure is shared out', () => {
  /** A square of 10 m whose third side was read 10.4 m, so that its corners are not where its sides alone bring them. */
  function balancedLot(): Site {
    const square = thing('lot', 'boundary', [
      typed(0, 0),
      { by: 'course', azimuth: 0, distance: 10 },
      { by: 'arc', radius: 8, sweep: 60 * DEGREE, chord: QUARTER },
      { by: 'course', azimuth: 180 * DEGREE, distance: 10.4 },
    ]);
    const closing = { by: 'course', azimuth: 270 * DEGREE, distance: 8.1 } as const;
    return yard({ features: [{ ...square, closing, balance: 'compass' } as Feature] });
  }

  it.each(['a', 'b', 'c', 'd'])(
    'keeps its other corners when %s is moved, and is as drawn from then on',
    (id) => {
      const site = balancedLot();
      const others = ['a', 'b', 'c', 'd'].filter((v) => v !== id).map((v) => `lot/${v}`);
      const moved = movePoint(site, { ref: ref('lot', id), to: { x: 3, y: 4 }, places: places(site) });
      expectHeld(site, moved, others);
      expect(at(moved, `lot/${id}`)).toEqual({ x: expect.closeTo(3, 9), y: expect.closeTo(4, 9) });
      expect(moved.features[0]).not.toHaveProperty('balance');
      expect(moved.features[0]?.vertices[2]?.spot).toMatchObject({ by: 'arc', sweep: 60 * DEGREE });
    },
  );

  it('keeps its corners when a point is put in or taken out', () => {
    const site = balancedLot();
    const vertex = { id: 'z', spot: finger(5, 12) };
    const more = insertVertex(site, { ref: ref('lot', 'c'), vertex, places: places(site) });
    expectHeld(site, more, ['lot/a', 'lot/b', 'lot/c', 'lot/d']);
    const fewer = removeVertex(site, { ref: ref('lot', 'b'), places: places(site) });
    expectHeld(site, fewer, ['lot/a', 'lot/c', 'lot/d']);
  });
});
