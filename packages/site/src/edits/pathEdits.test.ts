import { describe, expect, it } from 'vitest';
import { openSite, writeSite } from '../document/openSite';
import type { KnownLength, PipeLevel } from '../document/path';
import { ref, tee, yard } from '../testing/yard';
import { changePathVertex, removeKnownLength, setKnownLength } from './pathEdits';
import { reversePath } from './reversePath';
import { soundEdit } from './soundEdit';
import { setSpot } from './vertexEdits';

const site = yard(tee());
const known = (id: string, from: string, to: string, length = 9): KnownLength => ({ id, from, to, length });
const lengthsOf = (of: typeof site) => of.paths[0]?.knownLengths;

describe('what is known of a pipe at a point', () => {
  const invert: PipeLevel = { is: 'invert', level: 28.2, sigma: 0.01 };
  const all = changePathVertex(site, {
    id: 'main',
    at: 'b',
    facts: { bendRadius: 0.2, drop: 0.5, bend: 0.4, level: invert },
  });

  it('is kept where it is not spoken of, and cleared without a trace', () => {
    const deeper = changePathVertex(all, { id: 'main', at: 'b', facts: { drop: 0.7 } });
    expect(deeper.paths[0]?.vertices[1]).toMatchObject({
      bendRadius: 0.2,
      drop: 0.7,
      bend: 0.4,
      level: invert,
    });
    const cleared = changePathVertex(all, {
      id: 'main',
      at: 'b',
      facts: { bendRadius: undefined, drop: undefined, bend: undefined, level: undefined },
    });
    expect(cleared).toStrictEqual(site);
    const opened = openSite(writeSite(all));
    expect(opened.ok && opened.site).toEqual(all);
  });

  it('stays with the point when that is measured in another way or the pipe is turned round', () => {
    const moved = setSpot(all, { ref: ref('main', 'b'), spot: { by: 'finger', x: 11, y: 1 } });
    const turned = reversePath(all, { id: 'main', length: 20, places: new Map() });
    for (const edited of [moved, turned]) {
      expect(edited.paths[0]?.vertices[1]).toMatchObject({ drop: 0.5, bend: 0.4, level: invert });
    }
  });

  it.each<[string, PipeLevel, (string | number)[]]>([
    ['a level beyond any land', { is: 'invert', level: 20_001 }, ['level']],
    ['a depth above the ground', { is: 'depth-to-invert', depth: -0.1 }, ['depth']],
    ['a depth of a mine', { is: 'depth-to-top', depth: 50.1 }, ['depth']],
    ['a measurement that is sure beyond doubt', { is: 'depth-to-top', depth: 1, sigma: 0 }, ['sigma']],
  ])('is not %s', (_, level, path) => {
    const edited = changePathVertex(site, { id: 'main', at: 'b', facts: { level } });
    expect(soundEdit(site, edited)).toMatchObject({
      ok: false,
      problems: [{ path: ['paths', 0, 'vertices', 1, 'level', ...path] }],
    });
  });
});

describe('known lengths of a pipe', () => {
  it('are set and taken back', () => {
    const set = setKnownLength(site, { id: 'main', known: known('k', 'a', 'c', 20.1) });
    expect(lengthsOf(set)).toEqual([known('k', 'a', 'c', 20.1)]);
    const opened = openSite(writeSite(set));
    expect(opened.ok && opened.site).toEqual(set);
    expect(lengthsOf(removeKnownLength(set, { id: 'main', known: 'k' }))).toEqual([]);
    expect(() => removeKnownLength(set, { id: 'main', known: 'q' })).toThrow('q');
    expect(() => removeKnownLength(site, { id: 'main', known: 'k' })).toThrow('k');
  });

  it('between the same two points, either way round, take the place of the earlier', () => {
    const first = setKnownLength(site, { id: 'main', known: known('k', 'a', 'c') });
    for (const [from, to] of [
      ['a', 'c'],
      ['c', 'a'],
    ] as const) {
      const again = setKnownLength(first, { id: 'main', known: known('l', from, to, 21) });
      expect(lengthsOf(again)).toEqual([known('l', from, to, 21)]);
    }
    expect(lengthsOf(setKnownLength(first, { id: 'main', known: known('l', 'a', 'b') }))).toHaveLength(2);
  });

  it.each([
    [known('k', 'a', 'a'), 'length-to-itself', ['paths', 0, 'knownLengths', 0], 'a'],
    [known('k', 'a', 'z'), 'unknown-point', ['paths', 0, 'knownLengths', 0, 'to'], 'main/z'],
    [known('k', 'y', 'b'), 'unknown-point', ['paths', 0, 'knownLengths', 0, 'from'], 'main/y'],
  ] as const)('cannot be %j', (wrong, code, path, name) => {
    expect(soundEdit(site, setKnownLength(site, { id: 'main', known: wrong }))).toEqual({
      ok: false,
      problems: [{ code, path, name }],
    });
  });
});
