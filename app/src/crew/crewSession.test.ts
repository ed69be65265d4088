// fake-indexeddb: the IndexedDB of the W3C in memory, written by others
import 'fake-indexeddb/auto';
import { type AsFound, derive, type FoundReport, openSite, type Site } from '@footmark/site';
import sample from '@footmark/site/samples/rear-alley.json?raw';
import { beforeEach, describe, expect, it } from 'vitest';
import { recordOf, stateOf } from './answerEdits';
import { openAnswerOf, putDown, tick, useCrewSession } from './crewSession';
import { givenAt, type Stop, stopsOf } from './stops';

const opened = openSite(sample);
if (!opened.ok) throw new Error('the sample does not open');
const { site: whole } = opened;
let number = 0;

/** The sample under an id of its own, so that no test finds the answer of another. */
function freshSite(): Site {
  number += 1;
  return { ...whole, id: `site${number}` };
}

/** The same mark two metres further on, as after a counter reading was put right. */
function moved(site: Site, { about }: Stop): Stop {
  if (about.is !== 'mark') throw new Error('the first stop is a mark');
  const runs = site.runs.map((run) => ({
    ...run,
    readings: run.readings.map((r) => (r.id === about.reading ? { ...r, counter: r.counter + 2 } : r)),
  }));
  const later = { ...site, runs };
  const stop = stopsOf(later, derive(later)).find(
    (s) => s.about.is === 'mark' && s.about.reading === about.reading,
  );
  if (stop === undefined) throw new Error('the mark is still there');
  return stop;
}

let site: Site;
let stop: Stop;

beforeEach(async () => {
  site = freshSite();
  const [first] = stopsOf(site, derive(site));
  if (first === undefined) throw new Error('the sample has stops');
  stop = first;
  await openAnswerOf(site);
});

const answer = () => {
  const { answer: now } = useCrewSession.getState();
  if (now === null) throw new Error('there is an answer');
  return now;
};
const record = (): FoundReport => {
  const found = recordOf(answer(), stop.about);
  if (found === null) throw new Error('there is a record');
  return found;
};

describe('a tick by a slip of the glove', () => {
  it('that is taken back leaves nothing that says that the mark is not there', () => {
    tick(stop, 'not-found');
    expect(record().state).toBe('not-found');
    tick(stop, 'not-found');
    expect(stateOf(answer(), stop.about)).toBeNull();
    expect(answer().found).toEqual([]);
  });

  it('leaves what was put down by hand', () => {
    tick(stop, 'not-found');
    putDown(stop, { note: 'Only fill' });
    tick(stop, 'not-found');
    expect(record().note).toBe('Only fill');
  });
});

describe('what is put down', () => {
  const atPaint = { by: 'paint', along: 0, right: 0 } as const;

  it('of a pipe that is laid bare ticks the mark as found, dug or not', () => {
    tick(stop, 'painted');
    tick(stop, 'dug');
    putDown(stop, { depth: { to: 'top', depth: 1 } });
    expect([record().state, stateOf(answer(), stop.about)]).toEqual(['found', 'found']);
  });

  it('in words, or on a photo, leaves a hole that is dug no more than that', () => {
    tick(stop, 'dug');
    putDown(stop, { note: 'Water in the hole' });
    expect([record().state, stateOf(answer(), stop.about)]).toEqual(['dug', 'dug']);
  });

  it('counts from the paint that the crew sees when it measures, not from that of an earlier plan', () => {
    tick(stop, 'not-found'); // at the old paint
    const later = moved(site, stop);
    putDown(later, { where: atPaint });
    expect(record().given).toEqual(givenAt(later));
    expect(placeOf(record())).toEqual({
      x: expect.closeTo(later.paint.x, 6),
      y: expect.closeTo(later.paint.y, 6),
    });
    // what is added to it later tells of the same place
    putDown(stop, { depth: { to: 'top', depth: 1 } });
    expect(record().given).toEqual(givenAt(later));
  });
});

function placeOf(found: AsFound) {
  return derive({ ...site, asFound: [found] }).found[0]?.at;
}
