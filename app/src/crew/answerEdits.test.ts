import { type FoundAbout, type FoundReport, openAnswer } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import {
  countsOf,
  newAnswer,
  othersNear,
  recordOf,
  stateOf,
  withName,
  withoutRecord,
  withoutTick,
  withRecord,
  withTick,
} from './answerEdits';

const at = (hour: number) => `2026-05-20T${String(hour).padStart(2, '0')}:00:00-05:00`;
const about: FoundAbout = { is: 'mark', run: 'r', reading: 'q1' };
const other: FoundAbout = { is: 'mark', run: 'r', reading: 'q2' };
const empty = newAnswer({
  id: 'a1',
  site: 's1',
  madeFrom: { version: 3, hash: '0123456789abcdef' },
  by: 'Crew one',
  language: 'en',
  at: at(8),
});
const record = (parts: Partial<FoundReport> = {}): FoundReport => ({
  id: 'w1',
  about,
  state: 'found',
  by: 'Crew one',
  at: at(12),
  note: '',
  photos: [],
  ...parts,
});

describe('ticks', () => {
  it('say how far a mark has come, each mark by itself', () => {
    const dug = withTick(withTick(empty, about, 'painted', at(9)), about, 'dug', at(11));
    expect(stateOf(dug, about)).toBe('dug');
    expect(stateOf(dug, other)).toBeNull();
    expect(openAnswer(dug).ok).toBe(true);
  });

  it('stand once each, and the last one counts, whatever was ticked before', () => {
    const again = [9, 11, 12].reduce(
      (a, h) => withTick(a, about, h === 11 ? 'dug' : 'painted', at(h)),
      empty,
    );
    expect(again.ticks).toHaveLength(2);
    expect(stateOf(again, about)).toBe('painted');
  });

  it('are taken back to what was ticked before, and so is what was put down', () => {
    const found = withRecord(
      withTick(withTick(empty, about, 'dug', at(10)), about, 'found', at(11)),
      record(),
    );
    const back = withoutTick(found, about, 'found', at(13));
    expect(stateOf(back, about)).toBe('dug');
    expect(recordOf(back, about)).toMatchObject({ state: 'dug', at: at(13) });
    const none = withoutTick(back, about, 'dug', at(14));
    expect(stateOf(none, about)).toBeNull();
    expect(recordOf(none, about)?.state).toBe('dug');
  });

  it('change the state and the time of what was put down, so that the office takes it as said anew', () => {
    const ticked = withTick(withRecord(empty, record()), about, 'not-found', at(15));
    expect(recordOf(ticked, about)).toMatchObject({ state: 'not-found', at: at(15) });
  });
});

describe('records', () => {
  it('take the place of their earlier self', () => {
    const twice = withRecord(withRecord(empty, record()), record({ note: 'Wet' }));
    expect(twice.found).toEqual([record({ note: 'Wet' })]);
    expect(withoutRecord(twice, 'w1')).toEqual(empty);
  });

  it('of something else stand by what is painted near it, and are not the mark’s own', () => {
    const given = { label: 'A1', at: { x: 0, y: 0 }, flow: 0, ties: [], side: 'left' } as const;
    const other = record({ id: 'w2', about: { is: 'place' }, given: { ...given, ties: [] } });
    const both = withRecord(withRecord(empty, record()), other);
    expect(othersNear(both, 'A1')).toEqual([other]);
    expect(othersNear(both, 'A2')).toEqual([]);
    expect(recordOf(both, about)?.id).toBe('w1');
    // a tick is of the mark
    expect(othersNear(withTick(both, about, 'dug', at(13)), 'A1')).toEqual([other]);
  });

  it('carry the name of the crew, also one that is given late', () => {
    const named = withName(withRecord(empty, record()), 'Crew two');
    expect([named.by, named.found[0]?.by]).toEqual(['Crew two', 'Crew two']);
  });

  it('are counted with the marks that have a tick and their photos', () => {
    const some = withRecord(
      withTick(withTick(withTick(empty, about, 'painted', at(9)), about, 'dug', at(9)), other, 'dug', at(9)),
      record({ photos: ['i1', 'i2'] }),
    );
    expect(countsOf(some)).toEqual({ done: 2, found: 1, photos: 2 });
  });
});
