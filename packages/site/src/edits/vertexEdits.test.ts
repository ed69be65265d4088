import { describe, expect, it } from 'vitest';
import { resolvePoints } from '../derive/resolvePoints';
import { openSiteValue } from '../document/openSite';
import type { Site } from '../document/site';
import { DEGREE, pipe, ref, tee, thing, typed, yard } from '../testing/yard';
import {
  freeVertexId,
  insertVertex,
  letters,
  movePoint,
  moveThing,
  releaseFrom,
  removeVertex,
  setSpot,
} from './vertexEdits';

const QUARTER = 90 * DEGREE;

/** A wall a (0, 0), b (0, 5), c (2, 5), d (2, 2), e (5, 2): typed, course, turn, course, turn. A post hangs on c. */
function walls(): Site {
  return yard({
    features: [
      thing('wall', 'fence', [
        typed(0, 0),
        { by: 'course', azimuth: 0, distance: 5 },
        { by: 'turn', turn: QUARTER, distance: 2 },
        { by: 'course', azimuth: 180 * DEGREE, distance: 3 },
        { by: 'turn', turn: -QUARTER, distance: 3 },
      ]),
      thing('post', 'reference-point', [{ by: 'bearing', from: ref('wall', 'c'), azimuth: 0, distance: 1 }]),
    ],
  });
}

const places = (site: Site) => resolvePoints(site).points;
const spots = (site: Site, id: string) =>
  [...site.features, ...site.paths].find((o) => o.id === id)?.vertices.map((v) => v.spot.by);

/** Where each point of a thing is, to the nanometre. */
function whereabouts(site: Site, id: string) {
  const owner = [...site.features, ...site.paths].find((o) => o.id === id);
  return Object.fromEntries(
    (owner?.vertices ?? []).map((v) => {
      const at = places(site).get(`${id}/${v.id}`)?.at;
      return [v.id, [Number(at?.x.toFixed(9)) + 0, Number(at?.y.toFixed(9)) + 0]];
    }),
  );
}

function expectSound(site: Site): void {
  const opened = openSiteValue(site);
  if (!opened.ok) expect.fail(JSON.stringify(opened.failure));
}

describe('movePoint', () => {
  it('moves the one point, and holds what was counted from it', () => {
    const site = walls();
    const before = whereabouts(site, 'wall');
    const moved = movePoint(site, { ref: ref('wall', 'b'), to: { x: -1, y: 4 }, places: places(site) });
    expect(whereabouts(moved, 'wall')).toEqual({ ...before, b: [-1, 4] });
    // c was counted from b; d is a course from c, which stays: it is still as measured
    expect(spots(moved, 'wall')).toEqual(['coordinates', 'finger', 'finger', 'course', 'turn']);
    expectSound(moved);
  });

  it('holds a turn two on, which took its direction from the leg that swings', () => {
    const site = walls();
    const before = whereabouts(site, 'wall');
    const moved = movePoint(site, { ref: ref('wall', 'c'), to: { x: 3, y: 6 }, places: places(site) });
    expect(whereabouts(moved, 'wall')).toEqual({ ...before, c: [3, 6] });
    expect(spots(moved, 'wall')).toEqual(['coordinates', 'course', 'finger', 'finger', 'finger']);
  });

  it('takes along what is measured from the point', () => {
    const site = walls();
    const moved = movePoint(site, { ref: ref('wall', 'c'), to: { x: 3, y: 6 }, places: places(site) });
    expect(whereabouts(moved, 'post')).toEqual({ a: [3, 7] });
  });

  it('keeps a path vertex’s fitting and drop', () => {
    const site = yard({
      paths: [pipe('p', [typed(0, 0), { spot: typed(5, 0), bendRadius: 0.3, drop: 1 }, typed(9, 2)])],
    });
    const moved = movePoint(site, { ref: ref('p', 'b'), to: { x: 5, y: 1 }, places: places(site) });
    expect(moved.paths[0]?.vertices[1]).toEqual({
      id: 'b',
      spot: { by: 'finger', x: 5, y: 1 },
      bendRadius: 0.3,
      drop: 1,
    });
  });
});

describe('moveThing', () => {
  it('moves places given in the plan and leaves what was measured from elsewhere', () => {
    const site = yard({
      features: [
        thing('post', 'reference-point', [typed(1, 1)]),
        thing('line', 'fence', [
          { by: 'finger', x: 0, y: 0 },
          typed(4, 0),
          { by: 'course', azimuth: 0, distance: 2 },
          { by: 'at', point: ref('post') },
        ]),
      ],
    });
    const moved = moveThing(site, { id: 'line', by: { x: 10, y: -1 } });
    expect(whereabouts(moved, 'line')).toEqual({ a: [10, -1], b: [14, -1], c: [14, 1], d: [1, 1] });
    expect(spots(moved, 'line')).toEqual(spots(site, 'line'));
  });
});

describe('insertVertex', () => {
  it('puts a point behind another, and nothing else moves', () => {
    const site = walls();
    const before = whereabouts(site, 'wall');
    const vertex = { id: 'f', spot: typed(1, 9) };
    const changed = insertVertex(site, { ref: ref('wall', 'b'), vertex, places: places(site) });
    expect(changed.features[0]?.vertices.map((v) => v.id)).toEqual(['a', 'b', 'f', 'c', 'd', 'e']);
    expect(whereabouts(changed, 'wall')).toEqual({ ...before, f: [1, 9] });
    expect(spots(changed, 'wall')).toEqual([
      'coordinates',
      'course',
      'coordinates',
      'finger',
      'course',
      'turn',
    ]);
    expectSound(changed);
  });

  it('lengthens a line at its end', () => {
    const site = walls();
    const vertex = { id: 'f', spot: { by: 'turn' as const, turn: QUARTER, distance: 1 } };
    const changed = insertVertex(site, { ref: ref('wall', 'e'), vertex, places: places(site) });
    expect(whereabouts(changed, 'wall')).toEqual({ ...whereabouts(site, 'wall'), f: [5, 1] });
  });
});

describe('removeVertex', () => {
  it('takes a point out; what was counted or measured from it stays in place', () => {
    const site = walls();
    const { c: _, ...others } = whereabouts(site, 'wall');
    const changed = removeVertex(site, { ref: ref('wall', 'c'), places: places(site) });
    expect(whereabouts(changed, 'wall')).toEqual(others);
    expect(whereabouts(changed, 'post')).toEqual(whereabouts(site, 'post'));
    expect(spots(changed, 'wall')).toEqual(['coordinates', 'course', 'finger', 'finger']);
    expect(spots(changed, 'post')).toEqual(['finger']);
    expectSound(changed);
  });

  it('takes the first point of a line out', () => {
    const site = walls();
    const changed = removeVertex(site, { ref: ref('wall', 'a'), places: places(site) });
    expect(spots(changed, 'wall')).toEqual(['finger', 'finger', 'course', 'turn']);
    expectSound(changed);
  });

  it('refuses to leave less than a line', () => {
    const site = yard({ paths: [pipe('p', [typed(0, 0), typed(1, 1)])] });
    expect(() => removeVertex(site, { ref: ref('p', 'a'), places: places(site) })).toThrow(RangeError);
  });

  it('frees a branch that joined at the point', () => {
    const site = yard(tee());
    const changed = removeVertex(site, { ref: ref('main', 'b'), places: places(site) });
    expect(whereabouts(changed, 'branch')).toEqual({ a: [10, 5], b: [10, 0] });
    expectSound(changed);
  });
});

describe('setSpot', () => {
  it('says anew how a point got its place, and what hangs on it follows', () => {
    const spot = { by: 'course', azimuth: 0, distance: 6 } as const;
    const changed = setSpot(walls(), { ref: ref('wall', 'b'), spot });
    expect(whereabouts(changed, 'wall')).toEqual({ a: [0, 0], b: [0, 6], c: [2, 6], d: [2, 3], e: [5, 3] });
    expect(whereabouts(changed, 'post')).toEqual({ a: [2, 7] });
  });
});

describe('every edit of points', () => {
  const site = walls();
  const at = places(site);
  const edits: Record<string, (given: Site) => Site> = {
    setSpot: (s) => setSpot(s, { ref: ref('wall', 'b'), spot: typed(0, 4) }),
    movePoint: (s) => movePoint(s, { ref: ref('wall', 'b'), to: { x: 0, y: 4 }, places: at }),
    moveThing: (s) => moveThing(s, { id: 'wall', by: { x: 1, y: 1 } }),
    insertVertex: (s) =>
      insertVertex(s, { ref: ref('wall', 'b'), vertex: { id: 'z', spot: typed(0, 4) }, places: at }),
    removeVertex: (s) => removeVertex(s, { ref: ref('wall', 'c'), places: at }),
    releaseFrom: (s) => releaseFrom(s, (r) => r.of === 'wall', at),
  };

  it.each(Object.entries(edits))('%s leaves the site before it as it was, to undo to', (_, edit) => {
    const frozen = deepFreeze(walls());
    const text = JSON.stringify(frozen);
    const changed = edit(frozen);
    expect(changed).not.toEqual(frozen);
    expect(JSON.stringify(frozen)).toBe(text);
    expect(changed.runs).toBe(frozen.runs); // what did not change is the same, not a copy
    expect(changed.paths.every((p, i) => p === frozen.paths[i])).toBe(true);
  });

  it('throws on a name that the site does not have', () => {
    expect(() => setSpot(site, { ref: ref('wall', 'q'), spot: typed(0, 0) })).toThrow('wall/q');
    expect(() => moveThing(site, { id: 'gone', by: { x: 0, y: 0 } })).toThrow('gone');
    expect(() => movePoint(site, { ref: ref('gone', 'a'), to: { x: 0, y: 0 }, places: at })).toThrow('gone');
    expect(() => removeVertex(site, { ref: ref('wall', 'q'), places: at })).toThrow('wall/q');
  });
});

describe('names that are free', () => {
  it('go from a to z and on with two letters', () => {
    expect([0, 25, 26, 51, 52, 701, 702].map(letters)).toEqual(['A', 'Z', 'AA', 'AZ', 'BA', 'ZZ', 'AAA']);
    expect(freeVertexId([])).toBe('a');
    expect(freeVertexId([{ id: 'a' }, { id: 'c' }])).toBe('b');
    expect(freeVertexId(Array.from({ length: 26 }, (_, n) => ({ id: letters(n).toLowerCase() })))).toBe('aa');
  });
});

function deepFreeze<Value>(value: Value): Value {
  if (typeof value === 'object' && value !== null) {
    for (const inner of Object.values(value)) deepFreeze(inner);
    Object.freeze(value);
  }
  return value;
}
