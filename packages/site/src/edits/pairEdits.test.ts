import { describe, expect, it } from 'vitest';
import { openSite, writeSite } from '../document/openSite';
import type { Pair } from '../document/visit';
import { push, tee, yard } from '../testing/yard';
import { addPair, removePair, tellApart } from './pairEdits';
import { soundEdit } from './soundEdit';

const down = push({ entry: 'head', path: 'main' }, [3, 7]);
const up = push({ id: 'up', letter: 'B', entry: 'end', path: 'main', direction: 'against-flow' }, [
  { id: 'u1', counter: 4 },
  { id: 'u2', counter: 13 },
]);
const site = yard({ ...tee(), runs: [down, up] });
const pair = (id: string, a: string, b: string): Pair => ({
  id,
  a: { run: a.startsWith('u') ? 'up' : 'run', reading: a },
  b: { run: b.startsWith('u') ? 'up' : 'run', reading: b },
});

describe('pairs', () => {
  it('are said and taken back', () => {
    const paired = addPair(site, { pair: pair('p', 'r2', 'u2') });
    expect(paired.pairs).toEqual([pair('p', 'r2', 'u2')]);
    const opened = openSite(writeSite(paired));
    expect(opened.ok && opened.site).toEqual(paired);
    expect(removePair(paired, { id: 'p' })).toEqual(site);
    expect(() => removePair(paired, { id: 'q' })).toThrow('q');
  });

  it('of the same two, either way round, change nothing', () => {
    const paired = addPair(site, { pair: pair('p', 'r2', 'u2') });
    expect(addPair(paired, { pair: pair('q', 'r2', 'u2') })).toBe(paired);
    expect(addPair(paired, { pair: pair('q', 'u2', 'r2') })).toBe(paired);
    expect(addPair(paired, { pair: pair('q', 'r2', 'u1') }).pairs).toHaveLength(2);
  });

  it('of readings that are told apart are none, until they are paired again', () => {
    const paired = addPair(site, { pair: pair('p', 'r2', 'u2') });
    const apart = tellApart(paired, { pair: pair('q', 'u2', 'r2') });
    expect(apart.pairs).toEqual([]);
    expect(apart.different).toEqual([pair('q', 'u2', 'r2')]);
    expect(tellApart(apart, { pair: pair('x', 'r2', 'u2') })).toBe(apart);
    expect(addPair(apart, { pair: pair('p', 'r2', 'u2') })).toEqual(paired);
    const opened = openSite(writeSite(apart));
    expect(opened.ok && opened.site).toEqual(apart);
  });

  it.each([
    ['itself', pair('p', 'r1', 'r1'), 'paired-with-itself', ['pairs', 0], 'r1'],
    ['a reading that is not there', pair('p', 'r1', 'u9'), 'unknown-reading', ['pairs', 0, 'b'], 'up/u9'],
    [
      'a reading of another run than it says',
      { ...pair('p', 'r1', 'u1'), a: { run: 'up', reading: 'r1' } },
      'unknown-reading',
      ['pairs', 0, 'a'],
      'up/r1',
    ],
  ] as const)('cannot be with %s', (_, wrong, code, path, name) => {
    expect(soundEdit(site, addPair(site, { pair: wrong }))).toEqual({
      ok: false,
      problems: [{ code, path, name }],
    });
  });

  it('have names of their own', () => {
    const twice = ['u1', 'u2'].reduce((s, b) => addPair(s, { pair: pair('p', 'r1', b) }), site);
    expect(soundEdit(site, twice)).toMatchObject({
      ok: false,
      problems: [{ code: 'duplicate-id', path: ['pairs', 1, 'id'] }],
    });
  });
});
