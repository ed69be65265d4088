import { describe, expect, it } from 'vitest';
import type { Run } from '../document/run';
import { push, tee, yard } from '../testing/yard';
import { derive } from './derive';
import type { GapEnd } from './unseen';

const down = { entry: 'head', path: 'main' } as const;
const up = { entry: 'end', path: 'main', direction: 'against-flow' } as const;
const side = { entry: 'side', path: 'branch' } as const;

function unseen(...pushes: readonly (readonly [facts: Partial<Run>, furthest: number])[]) {
  const runs = pushes.map(([facts, furthest], i) => {
    const letter = String.fromCharCode(65 + i);
    return push({ id: letter, letter, ...facts }, [{ counter: furthest, id: `${letter}1` }]);
  });
  return derive(yard({ ...tee(), runs })).unseen.map((gap) => [
    gap.path,
    gap.from,
    gap.to,
    told(gap.upstream),
    told(gap.downstream),
  ]);
}

function told(end: GapEnd | null): string | null {
  if (end === null) return null;
  return end.is === 'stopped'
    ? `${end.run} stopped at ${end.last.label}: ${end.ended}`
    : `${end.run} ${end.is}`;
}

describe('what no camera has seen', () => {
  it('is all of a pipe that none was in', () => {
    expect(unseen()).toEqual([
      ['main', 0, 20, null, null],
      ['branch', 0, 5, null, null],
    ]);
  });

  it('is nothing where runs meet or overlap', () => {
    expect(unseen([down, 12], [up, 9], [side, 5])).toEqual([]);
  });

  it('lies between two runs, each with why it went no further', () => {
    expect(unseen([{ ...down, ended: 'could-not-pass' }, 4], [up, 9], [side, 5])).toEqual([
      ['main', 4, 11, 'A stopped at A1: could-not-pass', 'B stopped at B1: null'],
    ]);
  });

  it('goes on to the end of the pipe behind the last run', () => {
    expect(unseen([{ ...down, ended: 'under-water' }, 15], [side, 5])).toEqual([
      ['main', 15, 20, 'A stopped at A1: under-water', null],
    ]);
  });

  it('lies upstream of where a run came in from another pipe, and of where one turned off', () => {
    expect(unseen([side, 15])).toEqual([['main', 0, 10, null, 'A turned']]);
    expect(unseen([{ ...up, branches: ['branch'] }, 15])).toEqual([['main', 0, 10, null, 'A turned']]);
  });

  it('tells of the run that stopped there rather than of one that only came by', () => {
    expect(unseen([side, 15], [{ ...up, ended: 'could-not-pass' }, 10])).toEqual([
      ['main', 0, 10, null, 'B stopped at B1: could-not-pass'],
    ]);
  });

  it('lies behind an entry in the middle of the pipe', () => {
    const { features, paths } = tee();
    const mid = { id: 'mid', kind: 'cleanout', name: '', fields: {} } as const;
    const spot = { by: 'coordinates', x: 6, y: 0 } as const;
    const site = yard({
      features: [...features, { ...mid, vertices: [{ id: 'a', spot }] }],
      paths,
      runs: [push({ entry: 'mid', path: 'main' }, [14])],
    });
    expect(derive(site).unseen.filter((gap) => gap.path === 'main')).toEqual([
      { path: 'main', from: 0, to: 6, upstream: null, downstream: { run: 'run', is: 'began' } },
    ]);
  });
});
