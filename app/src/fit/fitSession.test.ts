import { addRun, changeSite, newSite, type RunsFit, type Site } from '@footmark/site';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Desk } from '../session/desk';
import { edit, openInSession, undo } from '../session/siteSession';
import { currentFit, startWeighing } from './fitSession';
import { type Weighed, weigh } from './weigh';

/** A desk whose answers come when the test says so. */
const waiting: { site: Site; answer: (weighed: Weighed) => void }[] = [];
const desk: Desk<Site, Weighed> = {
  ask: (site, answer) => void waiting.push({ site, answer }),
  drop: () => void waiting.splice(0),
};

function siteWithRun(): Site {
  const site = newSite({
    id: 'yard',
    name: 'Yard',
    createdAt: '2026-05-04T08:00:00Z',
    units: { length: 'm', diameter: 'mm', direction: 'azimuth' },
  });
  return addRun(site, {
    run: {
      id: 'r',
      letter: 'A',
      name: '',
      visit: null,
      entry: null,
      path: null,
      direction: 'with-flow',
      branches: [],
      zero: { at: 'in-pipe', counter: 0 },
      scale: { by: 'said', factor: 1 },
      resolution: 0.03,
      head: { length: 0, zeroed: 'lens' },
      note: '',
      readings: [],
    },
  });
}

function answer(): RunsFit {
  const asked = waiting.shift();
  if (asked === undefined) throw new Error('nobody asked');
  const weighed = weigh(asked.site);
  if (weighed.failed) throw new Error('a yard without a line can be weighed');
  asked.answer(weighed);
  return weighed.fit;
}

const rename = (name: string) => edit(`Call it ${name}`, (s) => changeSite(s, { name }));

describe('the fit of the open site', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => {
    openInSession(null);
    vi.useRealTimers();
  });
  startWeighing(desk);

  it('is nothing without runs', () => {
    openInSession({ ...siteWithRun(), runs: [] });
    vi.runAllTimers();
    expect(waiting).toEqual([]);
    expect(currentFit()).toEqual({ fit: null, ofSite: null, busy: false, failed: false });
  });

  it('is asked for once the hand rests, and stays on screen while it is', () => {
    const site = siteWithRun();
    openInSession(site);
    expect(currentFit()).toMatchObject({ fit: null, busy: true });
    vi.runAllTimers();
    const first = answer();
    expect(currentFit()).toMatchObject({ fit: first, ofSite: site, busy: false });

    rename('One');
    vi.advanceTimersByTime(100);
    rename('Two');
    vi.advanceTimersByTime(100);
    expect(waiting).toEqual([]);
    expect(currentFit()).toMatchObject({ fit: first, ofSite: site, busy: true });
    vi.advanceTimersByTime(100);
    expect(waiting.map((w) => w.site.name)).toEqual(['Two']);
    const second = answer();
    expect(currentFit()).toMatchObject({ fit: second, busy: false });
  });

  it('is known at once for a state that was weighed before', () => {
    const site = siteWithRun();
    openInSession(site);
    vi.runAllTimers();
    const first = answer();
    rename('One');
    vi.runAllTimers();
    answer();
    undo();
    expect(currentFit()).toMatchObject({ fit: first, ofSite: site, busy: false });
    vi.runAllTimers();
    expect(waiting).toEqual([]);
  });

  it('keeps the last answer when the next one fails, and is none of another site', () => {
    openInSession(siteWithRun());
    vi.runAllTimers();
    const first = answer();
    rename('One');
    vi.runAllTimers();
    waiting.shift()?.answer({ failed: true });
    expect(currentFit()).toMatchObject({ fit: first, busy: false, failed: true });
    openInSession({ ...siteWithRun(), id: 'other' });
    expect(currentFit()).toMatchObject({ fit: null, ofSite: null, busy: true, failed: false });
  });
});
