import type { Site } from '../document/site';
import type { ObservationKind } from '../kinds/observationKinds';
import { farEnd } from './farEnd';
import type { Mark } from './marks';
import { pairSuggestions } from './pairSuggestions';
import { sameThings } from './sameThings';
import type { Ways } from './sondePlace';

/** Something that was seen in the pipe on one visit, by one run or by several. Stations (plan metres) ascending. */
export type VisitThing = {
  readonly path: string;
  readonly seen: ObservationKind;
  /** The readings of it, in the order of the site. */
  readonly marks: readonly Mark[];
  /** As its readings have it in the mean; alike for what is in one place. */
  readonly from: number;
  readonly to: number;
};

/**
 * What the runs of a visit saw (null: runs that name no visit). Readings that are paired, or could be, are one thing. The end of a run is
 * about the run, and none.
 */
export function thingsOfVisit(
  site: Site,
  ways: Ways,
  marks: readonly Mark[],
  visit: string | null,
): readonly VisitThing[] {
  const own = marks.filter(
    (m) => m.run.visit === visit && m.place !== null && m.reading.seen !== 'end-of-run',
  );
  const ids = new Set(own.map((m) => m.reading.id));
  const paired = site.pairs.filter(({ a, b }) => ids.has(a.reading) && ids.has(b.reading));
  const likely = pairSuggestions(site, own).map(({ a, b }) => ({
    id: '',
    a: { run: a.run.id, reading: a.reading.id },
    b: { run: b.run.id, reading: b.reading.id },
  }));
  const things = sameThings([...paired, ...likely]);
  const groups = new Map<string, Mark[]>();
  for (const mark of own) {
    const key = `${things.key(mark.reading.id)} ${mark.place?.path} ${mark.reading.seen}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [mark]);
    else group.push(mark);
  }
  return [...groups.values()].flatMap((group) => thingOf(group, ways) ?? []);
}

function thingOf(marks: readonly Mark[], ways: Ways): VisitThing | null {
  const first = marks[0];
  if (first?.place == null) return null;
  const { path } = first.place;
  const ends = marks.map((mark) => endsOf(mark, path, ways));
  const mean = (values: readonly number[]) => values.reduce((sum, v) => sum + v, 0) / values.length;
  return {
    path,
    seen: first.reading.seen,
    marks,
    from: mean(ends.map((e) => Math.min(...e))),
    to: mean(ends.map((e) => Math.max(...e))),
  };
}

/** Stations of both ends on the path of the near one; what goes on into another pipe ends, on this one, where that begins. */
function endsOf(mark: Mark, path: string, ways: Ways): readonly [number, number] {
  const near = mark.place?.station ?? 0;
  const far = farEnd(ways, mark);
  if (far === null) return [near, near];
  if (far.path === path) return [near, far.station];
  const leg = ways.routes.get(mark.run.id)?.legs.find((l) => l.path === path);
  return [near, leg?.toStation ?? near];
}
