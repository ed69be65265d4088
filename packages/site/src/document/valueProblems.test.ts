import { describe, expect, it } from 'vitest';
import { push, tee, yard } from '../testing/yard';
import { openSiteValue } from './openSite';
import type { Site } from './site';
import { valueProblems } from './valueProblems';

const ref = (reading: string) => ({ run: 'run', reading });
const two = (id: string) => ({ id, a: ref('r1'), b: ref('r2') });
const visit = { id: 'v', purpose: 'other', note: '' } as const;
const trench = {
  id: 'd',
  is: 'trench',
  path: 'main',
  from: 2,
  to: 9,
  depth: 1,
  name: '',
  note: '',
} as const;
const bare = yard({ ...tee(), runs: [push({ entry: 'head', path: 'main' }, [3, 7])] });
const site: Site = {
  ...bare,
  visits: [visit],
  pairs: [two('p')],
  different: [two('q')],
  digging: { ...bare.digging, digs: [trench] },
  setAside: ['pair/p'],
};

const LONG = 'x'.repeat(1000);

type Row = readonly [part: keyof Site, worse: Partial<Site>, problem: object];

/** Each part of a site with a value that no file takes: the second of a list, where the first is as it was. */
const rows: readonly Row[] = [
  [
    'visits',
    { visits: [visit, { ...visit, id: 'w', date: '2026-02-30' }] },
    { code: 'wrong-value', path: ['visits', 1, 'date'] },
  ],
  ['pairs', { pairs: [two('p'), two('')] }, { code: 'wrong-value', path: ['pairs', 1, 'id'] }],
  ['different', { different: [two('q'), two(LONG)] }, { code: 'too-long', path: ['different', 1, 'id'] }],
  [
    'digging',
    { digging: { ...site.digging, digs: [trench, { ...trench, id: 'e', depth: 101 }] } },
    { code: 'too-great', path: ['digging', 'digs', 1, 'depth'], limit: 100, inclusive: true },
  ],
  [
    'rules',
    { rules: { ...site.rules, set: LONG } as unknown as Site['rules'] }, // what the types refuse, as a file could have it
    { code: 'wrong-value', path: ['rules', 'set'] },
  ],
  ['setAside', { setAside: ['pair/p', LONG] }, { code: 'too-long', path: ['setAside', 1] }],
];

describe('the values of an edited site', () => {
  it('are sound in the site that these tests begin with', () => {
    expect(openSiteValue(site).ok).toBe(true);
  });

  it.each(rows)('are looked at in %s', (_, worse, problem) => {
    const after = { ...site, ...worse };
    expect(openSiteValue(after).ok).toBe(false);
    expect(valueProblems(site, after)).toMatchObject([problem]);
  });

  it.each(rows)('are not looked at again in %s that the edit left as they were', (_, worse) => {
    const before = { ...site, ...worse };
    expect(valueProblems(before, { ...before, name: 'Rear alley' })).toEqual([]);
  });

  it.each(['visits', 'pairs', 'different'] as const)('are looked at only where %s are others', (list) => {
    const worse = Object.fromEntries(rows.map(([part, facts]) => [part, facts[part]]))[list] as Site['pairs'];
    const before = { ...site, [list]: worse };
    expect(valueProblems(before, { ...before, [list]: worse.toReversed() })).toEqual([]);
    expect(valueProblems(site, { ...site, [list]: worse.toReversed() })).toMatchObject([
      { path: [list, 0, list === 'visits' ? 'date' : 'id'] },
    ]);
  });

  it.each([
    ['visits', 500],
    ['pairs', 5000],
    ['different', 5000],
  ] as const)('are one too many with the last of %s past %d', (list, most) => {
    const full = Array.from({ length: most }, () => site[list][0]);
    expect(valueProblems(site, { ...site, [list]: full })).toEqual([]);
    expect(valueProblems(site, { ...site, [list]: [...full, site[list][0]] })).toEqual([
      { code: 'too-many', path: [list], limit: most },
    ]);
  });

  it('are none of facts that a file does not know', () => {
    const after = { ...site, weather: 'rain' };
    expect(openSiteValue(after).ok).toBe(false);
    expect(valueProblems(site, after)).toEqual([{ code: 'wrong-value', path: ['weather'] }]);
  });
});
