import { describe, expect, it } from 'vitest';
import { derive } from '../derive/derive';
import { openSiteValue } from '../document/openSite';
import type { Site } from '../document/site';
import { push, ref, tee, thing, typed, yard } from '../testing/yard';
import { copyThings, pasteThings } from './copyThings';
import { setKnownLength } from './pathEdits';
import { removeThing } from './removeThing';
import { removeReading } from './runEdits';
import { removeVertex } from './vertexEdits';

const down = push({ entry: 'head', path: 'main' }, [
  { counter: 3, seenAt: ref('side') },
  { counter: 10, seenAt: ref('main', 'b') },
]);
const up = push(
  {
    id: 'up',
    letter: 'B',
    entry: 'end',
    path: 'main',
    direction: 'against-flow',
    zero: { at: 'point', counter: 2, point: ref('main', 'b') },
  },
  [{ id: 'u1', counter: 4 }],
);
const locate = (id: string, run: string, reading: string, x: number) =>
  thing(id, 'locate', [typed(x, 1)], { reading: { run, reading }, depth: 1.5 });
const bare = yard({
  ...tee(),
  features: [...tee().features, locate('l1', 'run', 'r1', 3), locate('l2', 'up', 'u1', 16)],
  runs: [down, up],
  pairs: [
    { id: 'p1', a: { run: 'run', reading: 'r1' }, b: { run: 'up', reading: 'u1' } },
    { id: 'p2', a: { run: 'run', reading: 'r2' }, b: { run: 'up', reading: 'u1' } },
  ],
});
const site = [
  { id: 'k1', from: 'a', to: 'b', length: 10 },
  { id: 'k2', from: 'a', to: 'c', length: 20 },
].reduce((s, known) => setKnownLength(s, { id: 'main', known }), bare);
const { points: places } = derive(site);

/** The site as it is after an edit, which has to be sound. */
function sound(edited: Site): Site {
  const opened = openSiteValue(edited);
  if (!opened.ok) return expect.fail(JSON.stringify(opened.failure));
  return opened.site;
}

const pairsOf = (of: Site) => of.pairs.map((p) => p.id);
const readingOf = (of: Site, id: string) => of.features.find((f) => f.id === id)?.fields;

describe('a reading that goes', () => {
  it('takes its pairs along and leaves its locate without a name', () => {
    const left = sound(removeReading(site, { run: 'run', id: 'r1' }));
    expect(pairsOf(left)).toEqual(['p2']);
    expect(readingOf(left, 'l1')).toStrictEqual({ depth: 1.5 });
    expect(readingOf(left, 'l2')).toEqual(readingOf(site, 'l2'));
  });

  it('that nothing names changes no feature and no pair', () => {
    const lone = { ...site, pairs: [] };
    const left = removeReading(lone, { run: 'run', id: 'r2' });
    expect(left.features).toBe(lone.features);
    expect(left.pairs).toBe(lone.pairs);
  });
});

describe('a run that goes', () => {
  it('takes all its pairs along and leaves its locates', () => {
    const left = sound(removeThing(site, { id: 'up', places }));
    expect(left.runs.map((r) => r.id)).toEqual(['run']);
    expect(pairsOf(left)).toEqual([]);
    expect(readingOf(left, 'l2')).toStrictEqual({ depth: 1.5 });
    expect(readingOf(left, 'l1')).toHaveProperty('reading');
    const other = sound(removeThing(site, { id: 'run', places }));
    expect(pairsOf(other)).toEqual([]);
    expect(readingOf(other, 'l1')).not.toHaveProperty('reading');
  });
});

describe('a point of the plan that goes', () => {
  it('is no longer where a counter was zeroed, what a reading saw or where a known length ends', () => {
    const left = sound(removeVertex(site, { ref: ref('main', 'b'), places }));
    expect(left.runs[1]?.zero).toEqual({ at: 'in-pipe', counter: 2 });
    expect(left.runs[0]?.readings[1]).not.toHaveProperty('seenAt');
    expect(left.runs[0]?.readings[0]).toEqual(down.readings[0]);
    expect(left.paths[0]?.knownLengths?.map((k) => k.id)).toEqual(['k2']);
  });

  it('with its whole thing is just as gone', () => {
    const left = sound(removeThing(site, { id: 'side', places }));
    expect(left.runs[0]?.readings.map((r) => r.seenAt)).toEqual([undefined, ref('main', 'b')]);
    expect(left.runs[1]).toEqual(site.runs[1]);
    const without = sound(removeThing(site, { id: 'main', places }));
    expect(without.runs[1]?.zero.at).toBe('in-pipe');
  });
});

describe('the copy of a locate', () => {
  it('belongs to no reading: the same sonde was not found twice', () => {
    const things = copyThings(site, ['l1'], places);
    expect(things.features[0]?.fields).toStrictEqual({ depth: 1.5 });
    const pasted = sound(pasteThings(site, { things, ids: new Map([['l1', 'l9']]), by: { x: 1, y: 0 } }));
    expect(readingOf(pasted, 'l1')).toHaveProperty('reading');
    expect(readingOf(pasted, 'l9')).toStrictEqual({ depth: 1.5 });
  });
});
