import type { Answer, Tick } from '../document/answer';
import type { AsFound, FoundState } from '../document/asFound';
import type { GroundState, Reading, Run } from '../document/run';
import type { Edit } from './edit';

/** What is done later on the ground has the higher rank. */
const RANK: Record<GroundState['state'], number> = { painted: 0, flagged: 1, dug: 2, found: 3 };

/**
 * Takes over what a crew sent back. A record that the site has already becomes the later of the two by its own time, so that the same
 * answer a second time changes nothing: the very site comes back. Marks come as far on the ground as the crew says, unless something
 * later, or on the same day something further, is known of them. What is about a mark that is gone stays as a record.
 */
export const mergeAnswer: Edit<{ answer: Answer }> = (site, { answer }) => {
  const asFound = withRecords(site.asFound, answer);
  const done = doneAt([...answer.ticks, ...answer.found]);
  const runs = site.runs.map((run) => withGround(run, done));
  const sameRuns = runs.every((run, i) => run === site.runs[i]);
  if (asFound === site.asFound && sameRuns) return site;
  return { ...site, asFound, runs: sameRuns ? site.runs : runs };
};

function withRecords(known: AsFound[], { id, found }: Answer): AsFound[] {
  const records = [...known];
  let changed = false;
  for (const report of found) {
    const record: AsFound = { ...report, answer: id };
    const index = known.findIndex((k) => k.id === report.id);
    const own = known[index];
    if (own !== undefined && Date.parse(own.at) >= Date.parse(report.at)) continue;
    if (own === undefined) records.push(record);
    else records[index] = record;
    changed = true;
  }
  return changed ? records : known;
}

/** By reading, as `run/reading`: what was last done about it, and on which day of the crew's own clock. */
function doneAt(
  said: readonly Pick<Tick, 'about' | 'state' | 'at'>[],
): ReadonlyMap<string, { readonly state: GroundState['state']; readonly date: string }> {
  const latest = new Map<string, { state: GroundState['state']; date: string; time: number }>();
  for (const { about, state, at } of said) {
    const ground = groundOf(state);
    if (about.is !== 'mark') continue;
    const key = `${about.run}/${about.reading}`;
    const before = latest.get(key);
    const [date, time] = [at.slice(0, 10), Date.parse(at)];
    const later = before === undefined || time > before.time;
    if (later || (time === before.time && RANK[ground] > RANK[before.state]))
      latest.set(key, { state: ground, date, time });
  }
  return latest;
}

/** A hole that it is not in is dug all the same. */
function groundOf(state: FoundState): GroundState['state'] {
  return state === 'not-found' ? 'dug' : state;
}

function withGround(run: Run, done: ReturnType<typeof doneAt>): Run {
  const readings = run.readings.map((reading): Reading => {
    const now = done.get(`${run.id}/${reading.id}`);
    if (now === undefined || !isLater(now, reading.ground)) return reading;
    return { ...reading, ground: { state: now.state, date: now.date } };
  });
  return readings.every((r, i) => r === run.readings[i]) ? run : { ...run, readings };
}

function isLater(
  now: { readonly state: GroundState['state']; readonly date: string },
  known: GroundState | undefined,
): boolean {
  if (known === undefined) return true;
  if (known.date !== undefined && known.date !== now.date) return known.date < now.date;
  return RANK[now.state] > RANK[known.state];
}
