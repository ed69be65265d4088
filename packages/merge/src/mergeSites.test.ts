import {
  addAsFound,
  changeAsFound,
  changeSite,
  openSiteValue,
  removeThing,
  type Site,
  sameValue,
  setSpot,
  soundEdit,
} from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { changesBetween } from './changesBetween';
import { mergeSites, mergeStates } from './mergeStates';
import { valueAt, withVersion } from './place';
import { placed, reading, smallYard } from './testing/smallYard';

const base = smallYard();
/** A merge whose site opens like a file. */
function merged(...sides: Parameters<typeof mergeSites>) {
  const made = mergeSites(...sides);
  expect(openSiteValue(made.site)).toMatchObject({ ok: true });
  return made;
}

const at = (site: Site, ...place: readonly string[]) => valueAt(site, place);

describe('merging two states of a site', () => {
  it('takes from each side what it changed', () => {
    const mine = changeSite(base, { name: 'Front yard' });
    const theirs = setSpot(base, { ref: { of: 'oak', at: 'a' }, spot: placed(9, 9) });
    const { site, others } = mergeSites(base, mine, theirs);
    expect(site.name).toBe('Front yard');
    expect(at(site, 'features', 'oak')).toEqual(at(theirs, 'features', 'oak'));
    expect(others).toEqual([]);
  });

  it('keeps my version of what both changed, and theirs beside it', () => {
    const mine = setSpot(base, { ref: { of: 'oak', at: 'a' }, spot: placed(1, 9) });
    const theirs = setSpot(base, { ref: { of: 'oak', at: 'a' }, spot: placed(9, 1) });
    const { site, others } = mergeSites(base, mine, theirs);
    expect(site).toBe(mine);
    expect(others).toEqual([{ place: ['features', 'oak'], other: at(theirs, 'features', 'oak') }]);
    const chosen = others[0];
    expect(chosen && sameValue(withVersion(site, chosen.place, chosen.other), theirs)).toBe(true);
  });

  it('puts readings of two people into one run, each behind what it was read after', () => {
    const mine = reading(base, 'm', 5);
    const theirs = reading(reading(base, 't', 6), 'u', 7);
    const { site, others } = mergeSites(base, mine, theirs);
    expect(site.runs[0]?.readings.map((r) => r.id)).toEqual(['r1', 't', 'u', 'm']);
    expect(others).toEqual([]);
  });

  it('brings back what one side took away and the other measured from', () => {
    const mine = removeThing(base, { id: 'pole', places: new Map() });
    const theirs = setSpot(base, {
      ref: { of: 'oak', at: 'a' },
      spot: { by: 'bearing', from: { of: 'pole', at: 'a' }, azimuth: 0, distance: 4 },
    });
    for (const [a, b] of [
      [mine, theirs],
      [theirs, mine],
    ] as const) {
      const { site, others } = merged(base, a, b);
      expect(at(site, 'features', 'pole')).toEqual(at(base, 'features', 'pole'));
      expect(at(site, 'features', 'oak')).toEqual(at(theirs, 'features', 'oak'));
      expect(others).toEqual([{ place: ['features', 'pole'], other: null }]);
    }
  });

  it('keeps a run that one side took away and the other read further in, with all its readings', () => {
    const mine: Site = { ...base, runs: [] };
    const theirs = reading(base, 't', 6);
    const { site, others } = mergeSites(base, mine, theirs);
    expect(site.runs).toEqual(theirs.runs);
    expect(others).toEqual([{ place: ['runs', 'run'], other: null }]);
  });

  it('does not close a ring of measurements: theirs waits', () => {
    const from = (of: string, on: string) => ({
      ref: { of, at: 'a' },
      spot: { by: 'bearing' as const, from: { of: on, at: 'a' }, azimuth: 1, distance: 2 },
    });
    const mine = setSpot(base, from('oak', 'pole'));
    const theirs = setSpot(base, from('pole', 'oak'));
    const { site, others } = merged(base, mine, theirs);
    expect(sameValue(site, mine)).toBe(true);
    expect(others).toEqual([{ place: ['features', 'pole'], other: at(theirs, 'features', 'pole') }]);
  });

  it('does not make a list longer than the file holds: theirs waits', () => {
    const note = (n: number) => ({ id: `n${n}`, at: '2026-01-02T03:04:05Z', text: '' });
    const withNotes = (from: number, count: number): Site => ({
      ...base,
      digging: { ...base.digging, notes: Array.from({ length: count }, (_, i) => note(from + i)) },
    });
    const [mine, theirs] = [withNotes(0, 3000), withNotes(3000, 3000)];
    expect(soundEdit(base, mine).ok).toBe(true);
    const { site, others } = merged(base, mine, theirs);
    expect(site).toBe(mine);
    expect(others).toHaveLength(3000);
  });

  it('puts together what two crews found, and keeps both versions of one record', () => {
    const found = (id: string, note: string) => ({
      id,
      about: { is: 'mark' as const, run: 'run', reading: 'r1' },
      state: 'found' as const,
      by: '',
      at: '2026-05-20T12:00:00-05:00',
      note,
      photos: [],
    });
    const known = addAsFound(base, { found: found('w1', 'as it came in') });
    const mine = addAsFound(known, { found: found('w2', 'by one crew') });
    const theirs = addAsFound(known, { found: found('w3', 'by another crew') });
    const both = merged(known, mine, theirs);
    expect(both.site.asFound.map((f) => f.id)).toEqual(['w1', 'w3', 'w2']);
    expect(both.others).toEqual([]);
    const noted = (note: string) => changeAsFound(known, { id: 'w1', facts: { note } });
    const { site, others } = merged(known, noted('mine'), noted('theirs'));
    expect(at(site, 'asFound', 'w1')).toMatchObject({ note: 'mine' });
    expect(others).toMatchObject([{ place: ['asFound', 'w1'], other: { note: 'theirs' } }]);
  });

  it('without a base keeps what either has, and both versions of what they have otherwise', () => {
    const mine = reading(changeSite(base, { name: 'A' }), 'm', 5);
    const theirs = reading(changeSite(base, { name: 'B' }), 't', 6);
    const { site, others } = mergeSites(null, mine, theirs);
    expect(site.runs[0]?.readings.map((r) => r.id).toSorted()).toEqual(['m', 'r1', 't']);
    expect(others).toEqual([{ place: ['name'], other: 'B' }]);
  });

  it('drops a version that was chosen about on either side, and keeps a new one', () => {
    const version = (other: string) => ({ place: ['name'], other });
    const state = (...names: readonly string[]) => ({
      site: base,
      others: names.map(version),
      binnedAt: null,
    });
    const made = mergeStates(state('A', 'B'), state('B'), state('A', 'B', 'C'));
    expect(made.others).toEqual([version('B'), version('C')]);
  });

  it('puts a site into the bin when either side did, and out of it', () => {
    const state = (binnedAt: number | null) => ({ site: base, others: [], binnedAt });
    expect(mergeStates(state(null), state(null), state(5)).binnedAt).toBe(5);
    expect(mergeStates(state(5), state(null), state(5)).binnedAt).toBe(null);
    expect(mergeStates(state(null), state(9), state(5)).binnedAt).toBe(5);
  });

  it('lists what differs by its place', () => {
    const after = reading(changeSite(base, { name: 'Front yard' }), 'm', 5);
    expect(changesBetween(base, after).map(({ place }) => place)).toEqual([
      ['name'],
      ['runs', 'run', 'readings', 'm'],
    ]);
  });
});
