import { describe, expect, it } from 'vitest';
import { openSite, writeSite } from '../document/openSite';
import type { Reading } from '../document/run';
import type { Site } from '../document/site';
import { yard } from '../testing/yard';
import {
  addReadings,
  addRun,
  changeReading,
  changeRun,
  moveReading,
  type ReadingFacts,
  sortReadings,
} from './runEdits';

const reading = (number: number, counter: number, more: Partial<Reading> = {}): Reading => ({
  id: `q${number}`,
  number,
  counter,
  seen: 'roots',
  passed: true,
  note: '',
  ...more,
});

function siteWith(readings: readonly Reading[]): Site {
  const empty = addRun(yard({}), {
    run: {
      id: 'r1',
      letter: 'A',
      name: '',
      visit: null,
      entry: null,
      path: null,
      direction: 'with-flow',
      branches: [],
      zero: { at: 'in-pipe', counter: 0 },
      scale: { by: 'said', factor: 1 },
      resolution: 0.1,
      head: { length: 0, zeroed: 'lens' },
      note: '',
      readings: [],
    },
  });
  return addReadings(empty, { run: 'r1', readings });
}

const order = (site: Site) => site.runs[0]?.readings.map((r) => r.number).join(' ');

describe('why a run ended', () => {
  it('is said, stays through other changes, and is cleared without a trace', () => {
    const before = siteWith([]);
    const said = changeRun(before, { id: 'r1', facts: { ended: 'cable-out' } });
    const later = changeRun(said, { id: 'r1', facts: { note: 'wet' } });
    expect(later.runs[0]).toMatchObject({ ended: 'cable-out', note: 'wet' });
    const cleared = changeRun(said, { id: 'r1', facts: { ended: undefined } });
    expect(Object.keys(cleared.runs[0] ?? {})).toEqual(Object.keys(before.runs[0] ?? {}));
    const opened = openSite(writeSite(cleared));
    expect(opened.ok && opened.site.runs).toEqual(before.runs);
  });
});

describe('facts of a reading', () => {
  const site = siteWith([reading(1, 5, { to: 7, severity: 'slight', note: 'wet' })]);
  const change = (before: Site, facts: ReadingFacts) =>
    changeReading(before, { run: 'r1', id: 'q1', facts }).runs[0]?.readings[0];

  it('stay when they are left out, and go without a trace when they are undefined', () => {
    expect(change(site, { photo: 'i1' })).toEqual({ ...site.runs[0]?.readings[0], photo: 'i1' });
    const cleared = change(site, { to: undefined, severity: undefined });
    expect(Object.entries(cleared ?? {})).toEqual(Object.entries(reading(1, 5, { note: 'wet' })));
  });

  it('typed while a photo was read are there when it comes', () => {
    const photoOf = (now: Site) => changeReading(now, { run: 'r1', id: 'q1', facts: { photo: 'i1' } });
    const typed = changeReading(site, { run: 'r1', id: 'q1', facts: { counter: 6, note: 'dry' } });
    expect(photoOf(typed).runs[0]?.readings[0]).toMatchObject({ counter: 6, note: 'dry', photo: 'i1' });
  });
});

describe('the order of readings', () => {
  const site = siteWith([reading(1, 5), reading(2, 3), reading(3, 3), reading(4, 1)]);

  it.each([
    ['q3', 0, '3 1 2 4'],
    ['q1', 3, '2 3 4 1'],
    ['q2', 1, '1 2 3 4'],
    ['q4', 2, '1 2 4 3'],
  ])('%s put to place %i', (id, to, expected) => {
    expect(order(moveReading(site, { run: 'r1', id, to }))).toBe(expected);
  });

  it('goes by the counter, equals as they were', () => {
    expect(order(sortReadings(site, { run: 'r1' }))).toBe('4 2 3 1');
  });

  it('stays as it is when the counter was set anew: it alone tells what came after', () => {
    const reset = siteWith([reading(1, 5, { newZero: 0 }), reading(2, 3), reading(3, 1)]);
    expect(order(sortReadings(reset, { run: 'r1' }))).toBe('1 2 3');
  });
});
