import { type EditProblem, newSite, openSiteValue, SITE_VERSION, type Site, soundEdit } from '@footmark/site';
import { buildSite } from './buildSite';
import { turnSomething } from './cure';
import { canonicalText } from './plainData';
import { type Shelf, shelvesOf, thingKey, topOf } from './shelves';
import type { OtherVersion, SiteState } from './siteState';
import { keyOf } from './siteThings';
import type { StampedSite, StampedThing } from './stampedSite';

/** What a stamped site shows. */
export type SiteView = SiteState & {
  /** Keys of the things that are not shown as they stand, since that would be no site that can be opened. */
  readonly turned: ReadonlySet<string>;
};

/** Each step turns one thing to its next choice. */
const MOST_STEPS = 1000;

const BIN = thingKey(['binnedAt']);

/**
 * The site that is shown of what was given: of each thing the latest value, the others waiting beside it. What was taken away on one side
 * and is needed on another is there; of changes that do not go together (a ring of tapes, a list that would be too long) the latest one
 * waits. It is the same on every device. Null: it is of a newer version, or no site that can be opened comes of it. What is as in `like`,
 * a sound site, is the same object.
 */
export function viewSite(stamped: StampedSite, like?: Site): SiteView | null {
  const { fixed, things } = stamped;
  if (fixed.version > SITE_VERSION) return null;
  const shelves = shelvesOf(stamped);
  const turned = withItsInner(shelves);
  const shown = (thing: StampedThing) => {
    const key = keyOf(thing);
    return turned.has(key) ? turned.get(key) : topOf(thing).is;
  };
  const build = () => buildSite(shelves, fixed, shown, like) as Site; // checked before it is given away
  let site = build();
  if (fixed.version < SITE_VERSION) {
    const opened = openSiteValue(site);
    if (!opened.ok) return null;
    ({ site } = opened);
  } else {
    const cured = new Set<string>();
    for (let step = 0; ; step++) {
      const problems = problemsOf(site, like);
      if (problems.length === 0) break;
      if (step === MOST_STEPS || !turnSomething({ site, problems, shelves, shown, turned, cured }))
        return null;
      site = build();
    }
  }
  return {
    site,
    others: othersOf(things, shown, turned),
    binnedAt: binnedOf(things),
    turned: new Set(turned.keys()),
  };
}

/** The things of an unchecked site of any version, for what was changed since to be held against. */
export function unchecked(stamped: StampedSite): Site {
  return buildSite(shelvesOf(stamped), stamped.fixed, (thing) => topOf(thing).is, undefined) as Site;
}

const EMPTY = newSite({
  id: 'empty',
  name: '',
  createdAt: '2026-01-01T00:00:00Z',
  units: { length: 'm', diameter: 'mm', direction: 'azimuth' },
});

function problemsOf(site: Site, like: Site | undefined): readonly EditProblem[] {
  const sound = soundEdit(like ?? EMPTY, site);
  return sound.ok ? [] : sound.problems;
}

/** A run that was taken away while others read further in it is there, with the readings that went with it. */
function withItsInner(top: Shelf): Map<string, unknown> {
  const turned = new Map<string, unknown>();
  const stands = ({ thing }: Shelf) => thing !== null && topOf(thing).is !== undefined;
  for (const list of top.below.values()) {
    for (const { thing, below } of list.below.values()) {
      const inner = [...below.values()].flatMap(({ below: items }) => [...items.values()]);
      if (thing === null || topOf(thing).is !== undefined || !inner.some(stands)) continue;
      const gone = topOf(thing);
      turned.set(keyOf(thing), gone.was);
      for (const { thing: item } of inner) {
        if (item === null) continue;
        const { by, n, is, was } = topOf(item);
        if (is === undefined && by === gone.by && n === gone.n) turned.set(keyOf(item), was);
      }
    }
  }
  return turned;
}

function othersOf(
  things: readonly StampedThing[],
  shown: (thing: StampedThing) => unknown,
  turned: ReadonlyMap<string, unknown>,
): readonly OtherVersion[] {
  return things.flatMap((thing): readonly OtherVersion[] => {
    const { place, is, values } = thing;
    const key = keyOf(thing);
    if (is === 'order' || key === BIN || (values.length < 2 && !turned.has(key))) return [];
    const now = canonicalText(shown(thing) ?? null);
    const given = new Map(values.map((value) => [canonicalText(value.is ?? null), value.is ?? null]));
    given.delete(now);
    if (turned.has(key) && isInTurned(place, turned)) given.delete('null');
    return [...given.entries()].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, other]) => ({ place, other }));
  });
}

/** A reading that is there with its run says nothing more than that its run is. */
function isInTurned(place: StampedThing['place'], turned: ReadonlyMap<string, unknown>): boolean {
  return place.length === 4 && turned.has(thingKey(place.slice(0, 2)));
}

/** Put into the bin on several sides: since the earliest time. */
function binnedOf(things: readonly StampedThing[]): number | null {
  const bin = things.find((thing) => keyOf(thing) === BIN);
  const times = (bin?.values ?? []).flatMap(({ is }) => (typeof is === 'number' ? [is] : []));
  return times.length === 0 ? null : Math.min(...times);
}
