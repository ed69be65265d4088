import { addRun, newSite, type Reading, type Run, removeReading } from '@footmark/site';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { currentSite, edit, openInSession, useSiteSession } from '../session/siteSession';
import { changeFacts } from './readingFacts';

const reading: Reading = { id: 'q', number: 1, counter: 3, seen: 'roots', passed: true, note: '' };
const run: Run = {
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
  readings: [reading],
};

describe('facts that come late', () => {
  beforeEach(() => {
    const units = { length: 'm', diameter: 'mm', direction: 'azimuth' } as const;
    const site = newSite({ id: 'yard', name: 'Yard', createdAt: '2026-05-04T08:00:00Z', units });
    openInSession(addRun(site, { run }));
  });
  afterEach(() => openInSession(null));

  it('leave what was typed since they were asked for', () => {
    changeFacts(run, reading, { note: 'wet' });
    expect(changeFacts(run, reading, { photo: 'i1' })).toBe(true);
    expect(currentSite().runs[0]?.readings).toEqual([{ ...reading, note: 'wet', photo: 'i1' }]);
  });

  it('are dropped without a step of undo when the reading is gone', () => {
    edit('Delete', (s) => removeReading(s, { run: 'r', id: 'q' }));
    const steps = useSiteSession.temporal.getState().pastStates.length;
    expect(changeFacts(run, reading, { photo: 'i1' })).toBe(false);
    expect(currentSite().runs[0]?.readings).toEqual([]);
    expect(useSiteSession.temporal.getState().pastStates).toHaveLength(steps);
  });
});
