import type { Site } from '../document/site';
import { sigmaOf } from '../rules/sigmaOf';
import { alongSigma } from './alongSigma';
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
  const paired = pairedThings(site, was, is).map(([before, after]) => stillThere(site, before, after));
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
  const [befores, afters] = [was, is].map((things) =>
    things
      .toSorted((a, b) => middleOf(a) - middleOf(b))
      .map((thing) => ({ thing, middle: middleOf(thing), sigma: sigmaOfThing(site, thing) })),
  );
  const look = sigmaOf(site, 'sameThing');
  const candidates: (StillThere & Candidate)[] = [];
  for (const [i, before] of befores?.entries() ?? []) {
    for (const [j, after] of afters?.entries() ?? []) {
      const moved = after.middle - before.middle;
      const sigma = Math.sqrt(before.sigma ** 2 + after.sigma ** 2 + look ** 2);
      const share = Math.abs(moved) / searchDistance(sigma);
      if (share >= 1) continue;
      candidates.push({
        before: before.thing,
        after: after.thing,
        moved,
        sigma,
        i,
        j,
        gain: 1 - share * share,
      });
    }
  }
  return orderedMatch(candidates).map(({ before, after, moved, sigma }) => ({ before, after, moved, sigma }));
}

/** Of its place along the pipe, as the first run had it. */
function sigmaOfThing(site: Site, { marks: [mark] }: VisitThing): number {
  return mark === undefined ? 0 : alongSigma(site, mark);
}

function stillThere(site: Site, before: VisitThing, after: VisitThing): StillThere {
  return {
    before,
    after,
    moved: middleOf(after) - middleOf(before),
    sigma: Math.hypot(sigmaOfThing(site, before), sigmaOfThing(site, after), sigmaOf(site, 'sameThing')),
  };
}

/** The things of both visits that a pair says are one, each once. */
function pairedThings(
  site: Site,
  was: readonly VisitThing[],
  is: readonly VisitThing[],
): readonly (readonly [before: VisitThing, after: VisitThing])[] {
  const byReading = (things: readonly VisitThing[]) =>
    new Map(things.flatMap((thing) => thing.marks.map((m) => [m.reading.id, thing] as const)));
  const [befores, afters] = [byReading(was), byReading(is)];
  const found = new Map<VisitThing, VisitThing>();
  const used = new Set<VisitThing>();
  for (const { a, b } of site.pairs) {
    const before = befores.get(a.reading) ?? befores.get(b.reading);
    const after = afters.get(b.reading) ?? afters.get(a.reading);
    if (before === undefined || after === undefined || before.path !== after.path) continue;
    if (found.has(before) || used.has(after)) continue;
    found.set(before, after);
    used.add(after);
  }
  return [...found];
}

function middleOf({ from, to }: VisitThing): number {
  return (from + to) / 2;
}
