import type { Reading, Run } from '../document/run';
import type { Site } from '../document/site';
import { changeById, type Edit, unknown } from './edit';
import { type Patch, patched } from './patch';
import { releaseReadings } from './releaseReadings';
import { releaseSetAside } from './releaseSetAside';
import { letters } from './vertexEdits';

/** Starts a run. */
export const addRun: Edit<{ run: Run }> = (site, { run }) => ({ ...site, runs: [...site.runs, run] });

export type RunFacts = Patch<Omit<Run, 'id' | 'letter' | 'readings'>>;

/** Changes what is said of a run as a whole; undefined for why it ended clears that. */
export const changeRun: Edit<{ id: string; facts: RunFacts }> = (site, { id, facts }) =>
  withRun(site, id, (run) => patched(run, facts));

/** Puts a reading at the end of a run. */
export const addReading: Edit<{ run: string; reading: Reading }> = (site, { run, reading }) =>
  withRun(site, run, (r) => ({ ...r, readings: [...r.readings, reading] }));

export type ReadingFacts = Patch<Omit<Reading, 'id' | 'number'>>;

/** Changes facts of a reading; undefined clears, what is left out stays. */
export const changeReading: Edit<{ run: string; id: string; facts: ReadingFacts }> = (
  site,
  { run, id, facts },
) =>
  withRun(site, run, (r) => ({
    ...r,
    readings: changeById(r.readings, id, 'reading', (reading) => patched(reading, facts)),
  }));

/** Puts several readings at the end of a run, in their order. */
export const addReadings: Edit<{ run: string; readings: readonly Reading[] }> = (site, { run, readings }) =>
  withRun(site, run, (r) => ({ ...r, readings: [...r.readings, ...readings] }));

/** Puts a reading to another place among those of its run (0: first). Its number stays. */
export const moveReading: Edit<{ run: string; id: string; to: number }> = (site, { run, id, to }) =>
  withRun(site, run, (r) => {
    const moved = r.readings.find((reading) => reading.id === id) ?? unknown('reading', id);
    return { ...r, readings: r.readings.filter((reading) => reading.id !== id).toSpliced(to, 0, moved) };
  });

/**
 * Puts the readings of a run in the order of the counter. A run whose counter was set anew keeps its order, which alone tells
 * what was read before and after.
 */
export const sortReadings: Edit<{ run: string }> = (site, { run }) =>
  withRun(site, run, (r) =>
    r.readings.some((reading) => reading.newZero !== undefined)
      ? r
      : { ...r, readings: r.readings.toSorted((a, b) => a.counter - b.counter) },
  );

/** Takes a reading out, its pairs, and what was set aside of them. The numbers of the others stay: they may be painted on the ground. */
export const removeReading: Edit<{ run: string; id: string }> = (site, { run, id }) => {
  const without = withRun(site, run, (r) => {
    if (!r.readings.some((reading) => reading.id === id)) return unknown('reading', id);
    return { ...r, readings: r.readings.filter((reading) => reading.id !== id) };
  });
  const freed = releaseReadings(without, (ref) => ref.run === run && ref.reading === id);
  return releaseSetAside({ ...without, ...freed });
};

/** The first letter that no run of the site has had yet among those that it holds. */
export function freeRunLetter(runs: readonly Run[]): string {
  const used = new Set(runs.map((r) => r.letter));
  for (let n = 0; ; n++) if (!used.has(letters(n))) return letters(n);
}

/** One more than the highest number in the run. */
export function nextReadingNumber(run: Run): number {
  return run.readings.reduce((highest, r) => Math.max(highest, r.number), 0) + 1;
}

function withRun(site: Site, id: string, change: (run: Run) => Run): Site {
  return { ...site, runs: changeById(site.runs, id, 'run', change) };
}
