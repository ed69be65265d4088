import { type EditProblem, refsOfSpot, type Site, type Spot } from '@footmark/site';
import { type Place, placeOfPath } from './place';
import { canonicalText } from './plainData';
import { choicesOf, later, type Shelf, topOf } from './shelves';
import { keyOf } from './siteThings';
import type { StampedThing } from './stampedSite';

/** A site that cannot be opened yet, and how what it is made of is shown. */
export type Ailing = {
  readonly site: Site;
  readonly problems: readonly EditProblem[];
  readonly shelves: Shelf;
  readonly shown: (thing: StampedThing) => unknown;
  /** What is shown of the things that are not shown as they stand, by their keys; it grows. */
  readonly turned: Map<string, unknown>;
  /** Keys of those that were turned since they did not go with others: they do not come back; it grows. */
  readonly cured: Set<string>;
};

/** Turns what the first problem that can be cured asks for. False: none can. */
export function turnSomething(ailing: Ailing): boolean {
  return ailing.problems.some(
    (problem) => revive(ailing, problem) || turnLatest(ailing, problem) || dropLatest(ailing, problem),
  );
}

/** What is missed by name comes back. */
function revive({ shelves, shown, turned, cured }: Ailing, problem: EditProblem): boolean {
  const missed = 'name' in problem ? placesNamed(problem.code, problem.name) : [];
  for (const place of missed) {
    const thing = thingAt(shelves, place);
    if (thing === null || cured.has(keyOf(thing)) || shown(thing) !== undefined) continue;
    const last = choicesOf(thing).find((choice) => choice !== undefined);
    if (last === undefined) continue;
    turned.set(keyOf(thing), last);
    return true;
  }
  return false;
}

/** Of the things that do not go together the one that was given last goes to its next choice. */
function turnLatest(ailing: Ailing, problem: EditProblem): boolean {
  const { site, shelves, shown, turned, cured } = ailing;
  const holder = placeOfPath(site, problem.path);
  const ring = problem.code === 'depends-on-itself' || problem.code === 'joins-itself';
  const places = [...(holder === null ? [] : [holder]), ...(ring ? ownersBehind(site, problem.name) : [])];
  const things = places
    .map((place) => thingAt(shelves, place))
    .filter((thing) => thing !== null)
    .sort(latestFirst);
  for (const thing of things) {
    const choices = choicesOf(thing);
    const now = canonicalText(shown(thing) ?? null);
    const at = choices.findIndex((choice) => canonicalText(choice ?? null) === now);
    if (at < 0 || at + 1 >= choices.length) continue;
    // a thing of its own goes only where nothing older of any of them would do
    if (choices[at + 1] === undefined && things.length > 1 && things.some((t) => hasOlder(t, ailing)))
      continue;
    turned.set(keyOf(thing), choices[at + 1]);
    cured.add(keyOf(thing));
    return true;
  }
  return false;
}

function hasOlder(thing: StampedThing, { shown }: Ailing): boolean {
  const choices = choicesOf(thing);
  const now = canonicalText(shown(thing) ?? null);
  const at = choices.findIndex((choice) => canonicalText(choice ?? null) === now);
  return at >= 0 && choices[at + 1] !== undefined;
}

/** Of a list that is too long, all that was put into it last waits. */
function dropLatest({ shelves, shown, turned, cured, site }: Ailing, problem: EditProblem): boolean {
  if (placeOfPath(site, problem.path) !== null) return false;
  const list = problem.path.reduce<Shelf | undefined>((at, step) => at?.below.get(String(step)), shelves);
  const there = [...(list?.below.values() ?? [])]
    .map(({ thing }) => thing)
    .filter((thing): thing is StampedThing => thing !== null && shown(thing) !== undefined)
    .sort(latestFirst);
  const last = there[0] === undefined ? null : topOf(there[0]);
  if (last === null) return false;
  const together = there.filter((thing) => topOf(thing).by === last.by && topOf(thing).n === last.n);
  const added = together.filter((thing) => topOf(thing).was === undefined);
  for (const thing of added.length > 0 ? added : together) {
    turned.set(keyOf(thing), undefined);
    cured.add(keyOf(thing));
  }
  return true;
}

/** Of two that were given at one count, the one of the writer who does not stand goes first. */
function latestFirst(a: StampedThing, b: StampedThing): number {
  const [topA, topB] = [topOf(a), topOf(b)];
  if (topA.n !== topB.n || topA.by === topB.by) return later(topA, topB) || (keyOf(a) < keyOf(b) ? -1 : 1);
  return later(topB, topA);
}

function thingAt(top: Shelf, place: Place): StampedThing | null {
  return place.reduce<Shelf | undefined>((at, step) => at?.below.get(step), top)?.thing ?? null;
}

/** The things that a thing is measured from, and what those are, the nearest first; `name` names it or a point of it. */
function ownersBehind(site: Site, name: string): readonly Place[] {
  const owners = new Map<string, { readonly place: Place; readonly spots: readonly Spot[] }>();
  for (const list of ['features', 'paths'] as const)
    for (const { id, vertices } of site[list])
      owners.set(id, { place: [list, id], spots: vertices.map((v) => v.spot) });
  const met = new Set([name.split('/')[0] ?? '']);
  for (const id of met) // grows while it is walked
    for (const spot of owners.get(id)?.spots ?? []) for (const { of } of refsOfSpot(spot)) met.add(of);
  return [...met].flatMap((id) => {
    const owner = owners.get(id);
    return owner === undefined ? [] : [owner.place];
  });
}

/** Where the thing would be that a problem misses by name. */
function placesNamed(code: EditProblem['code'], name: string): readonly Place[] {
  const [of = '', at = ''] = name.split('/');
  switch (code) {
    case 'unknown-point':
    case 'depends-on-itself':
      return [
        ['features', of],
        ['paths', of],
      ];
    case 'unknown-entry':
      return [['features', name]];
    case 'unknown-path':
    case 'joins-itself':
      return [['paths', name]];
    case 'unknown-visit':
      return [['visits', name]];
    case 'unknown-reading':
      return [
        ['runs', of],
        ['runs', of, 'readings', at],
      ];
    default:
      return [];
  }
}
