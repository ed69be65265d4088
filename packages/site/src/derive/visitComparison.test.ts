import { describe, expect, it } from 'vitest';
import type { Reading, Run } from '../document/run';
import type { Site } from '../document/site';
import { push, tee, yard } from '../testing/yard';
import { derive } from './derive';
import { compareVisits } from './visitComparison';
import type { VisitThing } from './visitThings';

const down = { entry: 'head', path: 'main' } as const;
const up = { entry: 'end', path: 'main', direction: 'against-flow' } as const;

type Sight = Partial<Reading> & { counter: number };
type Push = readonly [visit: string | null, facts: Partial<Run>, sights: readonly Sight[]];

const crack = (counter: number): Sight => ({ counter, seen: 'crack' });
const roots = (counter: number): Sight => ({ counter, seen: 'roots' });
const sag = (counter: number, to: number): Sight => ({ counter, to, seen: 'sag' });
/** How far the camera came. */
const end = (counter: number): Sight => ({ counter, seen: 'end-of-run' });

/** Runs A, B … of the visits, with readings A1, A2 … and pairs such as `A1 B2`. */
function compared(pushes: readonly Push[], paired: readonly string[] = [], turned = false) {
  const runs = pushes.map(([visit, facts, sights], i) => {
    const letter = String.fromCharCode(65 + i);
    const readings = sights.map((s, j) => ({ ...s, id: `${letter}${j + 1}` }));
    return push({ id: letter, letter, visit, ...facts }, readings);
  });
  const refOf = (reading = '') => ({ run: reading.slice(0, 1), reading });
  const pairs = paired.map((text, i) => {
    const [a, b] = text.split(' ');
    return { id: `p${i}`, a: refOf(a), b: refOf(b) };
  });
  const visits: Site['visits'] = [
    { id: 'first', purpose: 'first-look', note: '' },
    { id: 'cleaned', purpose: 'after-cleaning', note: '' },
  ];
  const site = yard({ ...tee(), runs, pairs, visits });
  const found = turned
    ? compareVisits(site, derive(site), 'cleaned', 'first')
    : compareVisits(site, derive(site), 'first', 'cleaned');
  const name = (thing: VisitThing) => thing.marks.map((m) => m.label).join('=');
  return {
    gone: found.gone.map(name),
    still: found.stillThere.map((s) => `${name(s.before)} ${name(s.after)}`),
    appeared: found.appeared.map(name),
    notAgain: found.notLookedAtAgain.map(name),
    firstLook: found.firstLookedAt.map(name),
    moved: found.stillThere.map((s) => s.moved),
  };
}

const nothing = { gone: [], still: [], appeared: [], notAgain: [], firstLook: [], moved: [] };

describe('two visits side by side', () => {
  it('tell what is gone, still there and new', () => {
    expect(
      compared([
        ['first', down, [roots(5), crack(8), roots(11), end(20)]],
        ['cleaned', down, [crack(8.3), crack(14), end(20)]],
      ]),
    ).toEqual({
      ...nothing,
      gone: ['A1', 'A3'],
      still: ['A2 B1'],
      moved: [expect.closeTo(0.3, 9)],
      appeared: ['B2'],
    });
  });

  it('the other way round have gone and new exchanged', () => {
    const pushes: readonly Push[] = [
      ['first', down, [roots(5), crack(8), end(20)]],
      ['cleaned', down, [crack(8.3), crack(14), end(20)]],
    ];
    expect(compared(pushes, [], true)).toEqual({
      ...nothing,
      gone: ['B2'],
      still: ['B1 A2'],
      moved: [expect.closeTo(-0.3, 9)],
      appeared: ['A1'],
    });
  });

  it('never call gone what no camera came to again, nor new what none came to before', () => {
    expect(
      compared([
        ['first', down, [roots(5), roots(15), end(18)]],
        ['cleaned', down, [end(12)]],
      ]),
    ).toEqual({ ...nothing, gone: ['A1'], notAgain: ['A2'] });
    expect(
      compared([
        ['first', down, [end(12)]],
        ['cleaned', down, [roots(5), roots(15), end(18)]],
      ]),
    ).toEqual({ ...nothing, appeared: ['B1'], firstLook: ['B2'] });
  });

  it('leave open what lies nearer to where the camera stopped than both counters are sure of', () => {
    // 12 m of cable each at 1 %: with count, zero and look 0.24 m, three of which are 0.72 m
    const sigma = Math.sqrt(
      2 * (0.03 ** 2 + 0.03 ** 2 / 12) + 2 * 0.05 ** 2 + 0.12 ** 2 + 0.112 ** 2 + 0.1 ** 2,
    );
    const [unsure, sure] = [12 - 3 * sigma + 0.05, 12 - 3 * sigma - 0.05];
    expect(
      compared([
        ['first', down, [roots(unsure), end(20)]],
        ['cleaned', down, [end(12)]],
      ]),
    ).toEqual({ ...nothing, notAgain: ['A1'] });
    expect(
      compared([
        ['first', down, [roots(sure), end(20)]],
        ['cleaned', down, [end(12)]],
      ]),
    ).toEqual({ ...nothing, gone: ['A1'] });
  });

  it('are sure up to the end of the pipe', () => {
    expect(
      compared([
        ['first', down, [roots(19.9)]],
        ['cleaned', down, [end(20)]],
      ]),
    ).toEqual({ ...nothing, gone: ['A1'] });
    expect(
      compared([
        ['first', up, [roots(19.9)]],
        ['cleaned', up, [end(20)]],
      ]),
    ).toEqual({ ...nothing, gone: ['A1'] });
  });

  it('take what two runs of a visit saw for one thing, paired or not', () => {
    const pushes: readonly Push[] = [
      ['first', down, [crack(8), end(12)]],
      ['first', up, [crack(11.6), end(12)]],
      ['cleaned', down, [crack(8.2), end(20)]],
    ];
    expect(compared(pushes)).toMatchObject({ gone: [], still: ['A1=B1 C1'], moved: [expect.closeTo(0, 9)] });
    // 3 m apart, and said to be one thing all the same
    const apart: readonly Push[] = [
      ['first', down, [crack(7), end(12)]],
      ['first', up, [crack(10), end(12)]],
      ['cleaned', down, [crack(8.5), end(20)]],
    ];
    expect(compared(apart, ['A1 B1'])).toMatchObject({ gone: [], still: ['A1=B1 C1'] });
    expect(compared(apart)).toMatchObject({ still: [] });
  });

  it('believe a pair over any distance', () => {
    const pushes: readonly Push[] = [
      ['first', down, [crack(5), end(20)]],
      ['cleaned', down, [crack(9), end(20)]],
    ];
    expect(compared(pushes)).toMatchObject({ gone: ['A1'], appeared: ['B1'] });
    expect(compared(pushes, ['B1 A1'])).toMatchObject({ gone: [], still: ['A1 B1'], moved: [4] });
  });

  it('keep things of a kind in their order', () => {
    expect(
      compared([
        ['first', down, [crack(5), crack(6), crack(7), end(20)]],
        ['cleaned', down, [crack(5.55), crack(6.55), crack(7.55), end(20)]],
      ]).still,
    ).toEqual(['A1 B1', 'A2 B2', 'A3 B3']);
  });

  it('match what goes on by its middle, from either side, and want all of it looked at', () => {
    // from the other end 20 − 13 = 7 to 20 − 11 = 9
    expect(
      compared([
        ['first', down, [sag(7, 9), end(20)]],
        ['cleaned', up, [sag(11, 13), end(20)]],
      ]),
    ).toMatchObject({ still: ['A1 B1'], moved: [expect.closeTo(0, 9)] });
    const sagTo = (to: number) =>
      compared([
        ['first', down, [sag(7, to), end(20)]],
        ['cleaned', down, [end(12)]],
      ]);
    expect(sagTo(9)).toMatchObject({ gone: ['A1'] });
    expect(sagTo(15)).toMatchObject({ gone: [], notAgain: ['A1'] });
  });

  it('look at both sides of a stretch from two runs together', () => {
    const sagged = (furthest: number) =>
      compared([
        ['first', down, [sag(8, 14), end(20)]],
        ['cleaned', down, [end(12)]],
        ['cleaned', up, [end(furthest)]],
      ]);
    expect(sagged(12)).toMatchObject({ gone: ['A1'] });
    expect(sagged(8.2)).toMatchObject({ notAgain: ['A1'] });
  });

  it('lay runs that name no visit beside one', () => {
    const runs = [
      push(
        { id: 'A', letter: 'A', ...down },
        [roots(5), end(20)].map((s, i) => ({ ...s, id: `A${i}` })),
      ),
      push({ id: 'B', letter: 'B', ...down, visit: 'v' }, [{ ...end(20), id: 'B0' }]),
    ];
    const visits: Site['visits'] = [{ id: 'v', purpose: 'other', note: '' }];
    const site = yard({ ...tee(), runs, visits });
    expect(compareVisits(site, derive(site), null, 'v').gone.map((t) => t.marks[0]?.label)).toEqual(['A1']);
    expect(compareVisits(site, derive(site), 'v', 'unknown')).toEqual({
      gone: [],
      stillThere: [],
      appeared: [],
      notLookedAtAgain: [],
      firstLookedAt: [],
    });
  });
});
