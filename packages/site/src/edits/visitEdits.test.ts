import { describe, expect, it } from 'vitest';
import { openSite, writeSite } from '../document/openSite';
import type { Visit } from '../document/visit';
import { push, yard } from '../testing/yard';
import { soundEdit } from './soundEdit';
import { addVisit, changeVisit, removeVisit } from './visitEdits';

const first: Visit = { id: 'v1', date: '2026-04-14', purpose: 'first-look', note: '' };
const second: Visit = { id: 'v2', purpose: 'after-cleaning', note: 'wet' };
const site = yard({
  visits: [first],
  runs: [push({ visit: 'v1' }), push({ id: 'up', letter: 'B', visit: null })],
});

describe('visits', () => {
  it('begin after those that are there', () => {
    const edited = addVisit(site, { visit: second });
    expect(edited.visits).toEqual([first, second]);
    const opened = openSite(writeSite(edited));
    expect(opened.ok && opened.site).toEqual(edited);
  });

  it('are told anew, each fact alone, and the date is cleared without a trace', () => {
    const visitOf = (facts: Parameters<typeof changeVisit>[1]['facts']) =>
      changeVisit(site, { id: 'v1', facts }).visits;
    expect(visitOf({ note: 'rain' })).toEqual([{ ...first, note: 'rain' }]);
    expect(visitOf({ date: '2026-04-15' })).toEqual([{ ...first, date: '2026-04-15' }]);
    expect(visitOf({ purpose: 'other' })).toEqual([{ ...first, purpose: 'other' }]);
    expect(visitOf({ date: undefined })).toStrictEqual([{ id: 'v1', purpose: 'first-look', note: '' }]);
    expect(() => changeVisit(site, { id: 'v9', facts: {} })).toThrow('v9');
  });

  it('are taken away from their runs, which stay', () => {
    const edited = removeVisit(site, { id: 'v1' });
    expect(edited.visits).toEqual([]);
    expect(edited.runs.map((r) => [r.id, r.visit])).toEqual([
      ['run', null],
      ['up', null],
    ]);
    expect(edited.runs[1]).toBe(site.runs[1]);
    expect(soundEdit(site, edited).ok).toBe(true);
    expect(() => removeVisit(site, { id: 'v9' })).toThrow('v9');
  });

  it('cannot go and leave their runs, nor be there twice, nor on a day that never was', () => {
    expect(soundEdit(site, { ...site, visits: [] })).toMatchObject({
      ok: false,
      problems: [{ code: 'unknown-visit', path: ['runs', 0, 'visit'], name: 'v1' }],
    });
    expect(soundEdit(site, addVisit(site, { visit: first }))).toMatchObject({
      ok: false,
      problems: [{ code: 'duplicate-id', path: ['visits', 1, 'id'] }],
    });
    expect(soundEdit(site, changeVisit(site, { id: 'v1', facts: { date: '2026-02-29' } }))).toMatchObject({
      ok: false,
      problems: [{ code: 'wrong-value', path: ['visits', 0, 'date'] }],
    });
  });
});
