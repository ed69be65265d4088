import type { Site } from '../document/site';
import { apartSigma } from './alongSigma';
import type { SeenStretch } from './coverage';
import type { Mark } from './marks';
import { type Candidate, orderedMatch } from './orderedMatch';
import { searchDistance } from './pairSuggestions';
import type { Ways } from './sondePlace';
import { thingsOfVisit, type VisitThing } from './visitThings';
import { wasLookedAt } from './wasLookedAt';

/** A thing that was seen on both visits. */
export type StillThere = {
  readonly before: VisitThing;
  readonly after: VisitThing;
  /** From where its middle was to where it is now (plan metres), with the flow. */
  readonly moved: number;
  /** Standard deviation of that by counters, zeros, scales and risers alone. */
  readonly sigma: number;
};

/** Two visits laid side by side: each thing that either saw is in one of the lists, path by path, with the flow. */
export type VisitComparison = {
  /** Seen before, and not although a camera came through there again. */
  readonly gone: readonly VisitThing[];
  readonly stillThere: readonly StillThere[];
  /** Seen now, where a camera came through before and it was not there. */
  readonly appeared: readonly VisitThing[];
  /** Seen before, where no camera came through again, or not surely: nothing is known of it. */
  readonly notLookedAtAgain: readonly VisitThing[];
  /** Seen now, where no camera had come through before, or not surely. */
  readonly firstLookedAt: readonly VisitThing[];
};

type Derivations = Ways & { readonly marks: readonly Mark[]; readonly coverage: readonly SeenStretch[] };

/** Compares what the runs of two visits saw; null stands for the runs that name no visit. */
export function compareVisits(
  site: Site,
  derived: Derivations,
  before: string | null,
  after: string | null,
): VisitComparison {
  const [was, is] = [before, after].map((visit) => thingsOfVisit(site, derived, derived.marks, visit)) as [
    readonly VisitThing[],
    readonly VisitThing[],
  ];
  const stillThere = matchThings(site, was, is);
  const matched = new Set(stillThere.flatMap((s) => [s.before, s.after]));
  const order = [...derived.paths.keys()];
  const inOrder = (things: readonly VisitThing[]) => things.toSorted((a, b) => byPlace(order, a, b));
  const lookedAgain = (thing: VisitThing) => wasLookedAt(site, thing, derived, after);
  const lookedBefore = (thing: VisitThing) => wasLookedAt(site, thing, derived, before);
  const onlyBefore = inOrder(was.filter((t) => !matched.has(t)));
  const onlyAfter = inOrder(is.filter((t) => !matched.has(t)));
  return {
    gone: onlyBefore.filter(lookedAgain),
    stillThere: stillThere.toSorted((a, b) => byPlace(order, a.before, b.before)),
    appeared: onlyAfter.filter(lookedBefore),
    notLookedAtAgain: onlyBefore.filter((t) => !lookedAgain(t)),
    firstLookedAt: onlyAfter.filter((t) => !lookedBefore(t)),
  };
}

function byPlace(order: readonly string[], a: VisitThing, b: VisitThing): number {
  return order.indexOf(a.path) - order.indexOf(b.path) || middleOf(a) - middleOf(b);
}

/** What is paired is the same; of the rest, things of one kind near each other, in their order along the pipe. */
function matchThings(
  site: Site,
  was: readonly VisitThing[],
  is: readonly VisitThing[],
): readonly StillThere[] {
  const paired = was.flatMap((before) => {
    const after = is.find((other) => arePaired(site, before, other));
    return after === undefined ? [] : [stillThere(site, before, after)];
  });
  const known = new Set(paired.flatMap((s) => [s.before, s.after]));
  const rows = new Map<string, { was: VisitThing[]; is: VisitThing[] }>();
  const rowOf = ({ path, seen }: VisitThing) => {
    const key = `${path} ${seen}`;
    const row = rows.get(key) ?? { was: [], is: [] };
    rows.set(key, row);
    return row;
  };
  for (const thing of was) if (!known.has(thing)) rowOf(thing).was.push(thing);
  for (const thing of is) if (!known.has(thing)) rowOf(thing).is.push(thing);
  return [...paired, ...[...rows.values()].flatMap((row) => matchRow(site, row.was, row.is))];
}

function matchRow(site: Site, was: readonly VisitThing[], is: readonly VisitThing[]): readonly StillThere[] {
  const along = (things: readonly VisitThing[]) => things.toSorted((a, b) => middleOf(a) - middleOf(b));
  const candidates: (StillThere & Candidate)[] = [];
  for (const [i, before] of along(was).entries()) {
    for (const [j, after] of along(is).entries()) {
      const still = stillThere(site, before, after);
      const share = Math.abs(still.moved) / searchDistance(still.sigma);
      if (share < 1) candidates.push({ ...still, i, j, gain: 1 - share * share });
    }
  }
  return orderedMatch(candidates).map(({ before, after, moved, sigma }) => ({ before, after, moved, sigma }));
}

function stillThere(site: Site, before: VisitThing, after: VisitThing): StillThere {
  const [a, b] = [before.marks[0], after.marks[0]];
  return {
    before,
    after,
    moved: middleOf(after) - middleOf(before),
    sigma: a === undefined || b === undefined ? 0 : apartSigma(site, a, b),
  };
}

function arePaired(site: Site, before: VisitThing, after: VisitThing): boolean {
  const has = (thing: VisitThing, reading: string) => thing.marks.some((m) => m.reading.id === reading);
  return site.pairs.some(
    ({ a, b }) =>
      (has(before, a.reading) && has(after, b.reading)) || (has(before, b.reading) && has(after, a.reading)),
  );
}

function middleOf({ from, to }: VisitThing): number {
  return (from + to) / 2;
}
