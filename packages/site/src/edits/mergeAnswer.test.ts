import { describe, expect, it } from 'vitest';
import { derive } from '../derive/derive';
import { openAnswer } from '../document/answer';
import { openSiteValue } from '../document/openSite';
import type { Site } from '../document/site';
import { answerOf, find, foundYard, given } from '../testing/foundYard';
import { ref } from '../testing/yard';
import { addAsFound, changeAsFound, removeAsFound } from './asFoundEdits';
import { mergeAnswer } from './mergeAnswer';
import { removeThing } from './removeThing';
import { changeReading, removeReading } from './runEdits';

const about = { is: 'mark', run: 'run', reading: 'r1' } as const;
const groundOf = (site: Site, id = 'r1') => site.runs[0]?.readings.find((r) => r.id === id)?.ground;

describe('records of what was found', () => {
  const record = find({ id: 'f1', given });

  it('are added, changed and taken away', () => {
    const added = addAsFound(foundYard(), { found: record });
    expect(openSiteValue(added).ok).toBe(true);
    const deep = changeAsFound(added, {
      id: 'f1',
      facts: { depth: { to: 'top', depth: 1.2 }, given: undefined, note: 'Wet' },
    });
    const { given: _, ...rest } = record;
    expect(deep.asFound).toEqual([{ ...rest, depth: { to: 'top', depth: 1.2 }, note: 'Wet' }]);
    expect(removeAsFound(deep, { id: 'f1' })).toEqual(foundYard());
    expect(() => removeAsFound(foundYard(), { id: 'f1' })).toThrow('f1');
    expect(() => changeAsFound(foundYard(), { id: 'f1', facts: {} })).toThrow('f1');
  });

  it('stay where they are when a point that they were taped from goes', () => {
    const tapes = [
      { from: ref('p1'), distance: 5 },
      { from: ref('p2'), distance: 5 },
    ];
    const site = foundYard([find({ id: 'f1', where: { by: 'tapes', tapes, side: 'right' } })]);
    const after = removeThing(site, { id: 'p2', places: derive(site).points });
    expect(openSiteValue(after).ok).toBe(true);
    expect(after.asFound[0]?.where).toEqual({
      by: 'finger',
      x: expect.closeTo(4, 9),
      y: expect.closeTo(0, 9),
    });
  });

  it('outlive the mark that they are about', () => {
    const after = removeReading(foundYard([record]), { run: 'run', id: 'r1' });
    expect(openSiteValue(after).ok).toBe(true);
    expect(after.asFound).toEqual([record]);
  });
});

describe('an answer that is taken over', () => {
  const answer = answerOf({
    ticks: [{ about, state: 'painted', at: '2026-05-20T09:00:00-05:00' }],
    found: [find({ id: 'f1', given, where: { by: 'paint', along: 0.2, right: 0 } })],
  });

  it('brings its records, with the answer that they came with, and how far the marks have come', () => {
    expect(openAnswer(answer).ok).toBe(true);
    const after = mergeAnswer(foundYard(), { answer });
    expect(openSiteValue(after).ok).toBe(true);
    expect(after.asFound).toEqual([{ ...answer.found[0], answer: 'answer1' }]);
    expect(groundOf(after)).toEqual({ state: 'found', date: '2026-05-20' });
    expect(groundOf(after, 'r2')).toBeUndefined();
  });

  it('a second time changes nothing at all', () => {
    const once = mergeAnswer(foundYard(), { answer });
    expect(mergeAnswer(once, { answer })).toBe(once);
    expect(mergeAnswer(foundYard(), { answer: answerOf() })).toEqual(foundYard());
  });

  it('brings what was added or said anew since it was sent first', () => {
    const once = mergeAnswer(foundYard(), { answer });
    const [first] = answer.found;
    if (first === undefined) return expect.fail('the answer has a record');
    const anew = { ...first, at: '2026-05-20T15:00:00-05:00', note: 'Measured again' };
    const second = find({ id: 'f2', about: { ...about, reading: 'r2' }, state: 'dug' });
    const twice = mergeAnswer(once, { answer: { ...answer, found: [anew, second] } });
    expect(twice.asFound.map(({ id, note }) => [id, note])).toEqual([
      ['f1', 'Measured again'],
      ['f2', ''],
    ]);
    expect(groundOf(twice, 'r2')?.state).toBe('dug');
    // the first answer again is older than what is known
    expect(mergeAnswer(twice, { answer })).toBe(twice);
  });

  it('in either order of two crews comes to the same', () => {
    const other = answerOf({
      id: 'answer2',
      by: 'Crew two',
      ticks: [{ about, state: 'dug', at: '2026-05-21T08:00:00-05:00' }],
      found: [find({ id: 'g1', by: 'Crew two', given, state: 'not-found', at: '2026-05-21T08:30:00-05:00' })],
    });
    const ab = mergeAnswer(mergeAnswer(foundYard(), { answer }), { answer: other });
    const ba = mergeAnswer(mergeAnswer(foundYard(), { answer: other }), { answer });
    expect(groundOf(ab)).toEqual(groundOf(ba));
    expect(new Set(ab.asFound)).toEqual(new Set(ba.asFound));
  });

  it('compares the clocks of two time zones by the instant, and keeps the crew’s own day', () => {
    const late = answerOf({ ticks: [{ about, state: 'dug', at: '2026-05-20T23:30:00-05:00' }] });
    expect(groundOf(mergeAnswer(foundYard(), { answer: late }))?.date).toBe('2026-05-20');
    const both = answerOf({
      ticks: [
        { about, state: 'painted', at: '2026-05-20T18:00:00Z' },
        { about, state: 'dug', at: '2026-05-20T12:00:00-07:00' },
      ],
    });
    expect(groundOf(mergeAnswer(foundYard(), { answer: both }))?.state).toBe('dug');
  });

  it('takes nothing back that is known from later, or on the same day from further on', () => {
    const known = (state: 'painted' | 'dug' | 'found', date?: string) =>
      changeReading(foundYard(), {
        run: 'run',
        id: 'r1',
        facts: { ground: date === undefined ? { state } : { state, date } },
      });
    const tick = (state: 'painted' | 'dug') =>
      answerOf({ ticks: [{ about, state, at: '2026-05-20T09:00:00-05:00' }] });
    expect(groundOf(mergeAnswer(known('painted', '2026-05-21'), { answer: tick('dug') }))?.state).toBe(
      'painted',
    );
    expect(groundOf(mergeAnswer(known('found', '2026-05-20'), { answer: tick('dug') }))?.state).toBe('found');
    expect(groundOf(mergeAnswer(known('painted', '2026-05-19'), { answer: tick('dug') }))?.state).toBe('dug');
    expect(groundOf(mergeAnswer(known('dug'), { answer: tick('painted') }))?.state).toBe('dug');
  });

  it('about marks and pipes that are gone is kept', () => {
    const lost = answerOf({
      ticks: [{ about: { ...about, reading: 'old' }, state: 'dug', at: '2026-05-20T09:00:00-05:00' }],
      found: [find({ id: 'f9', about: { is: 'set-out', path: 'gone', number: 3 } })],
    });
    const after = mergeAnswer(foundYard(), { answer: lost });
    expect(openSiteValue(after).ok).toBe(true);
    expect(after.asFound).toHaveLength(1);
    expect(after.runs).toBe(after.runs);
  });
});
