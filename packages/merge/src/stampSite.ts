import { type Site, sameValue } from '@footmark/site';
import { canonicalText } from './plainData';
import { thingKey, topOf } from './shelves';
import type { SiteState } from './siteState';
import { keyOf, type SiteThing, thingsOf } from './siteThings';
import {
  byKey,
  highestCount,
  inKeyOrder,
  inNameOrder,
  type Stamped,
  type StampedSite,
  type StampedThing,
} from './stampedSite';
import { unchecked, viewSite } from './viewSite';

/** Who stamps, and the highest count that is known elsewhere. */
type Writer = { readonly by: string; readonly above?: number };

/**
 * What was changed in a site since it was last stamped (null: never) becomes the writer's; also what was chosen of the versions that
 * waited. The site is sound. `last` itself when nothing was changed.
 */
export function stampSite(
  last: StampedSite | null,
  state: SiteState,
  { by, above = 0 }: Writer,
): StampedSite {
  const { format, version, id, createdAt } = state.site;
  const seen = last?.seen ?? {};
  const n = Math.max(above, last === null ? 0 : highestCount(last)) + 1;
  const [before, after] = [shownIn(last, state.site), shownOf(state)];
  const things = last === null ? new Map<string, StampedThing>() : byKey(last);
  const changed = changedKeys(before, after);
  let isStamped = false;
  for (const key of changed) {
    const { place, is } = after.things.get(key) ?? before.things.get(key) ?? before.known.get(key) ?? {};
    if (place === undefined || is === undefined) continue;
    const old = things.get(key)?.values ?? [];
    const values = stampThing(old, {
      now: after.things.get(key)?.value,
      was: before.things.get(key)?.value,
      wanted: after.others.get(key) ?? [],
      stands: things.has(key) && !before.turned.has(key),
      stamp: { by, n },
    });
    isStamped ||= values.some((value) => value.by === by && value.n === n);
    if (values.length === 0) things.delete(key);
    else things.set(key, { place, is, values });
  }
  if (changed.size === 0 && last !== null && last.fixed.version === version) return last;
  return {
    fixed: { format, version, id, createdAt },
    seen: isStamped ? { ...seen, [by]: n } : seen,
    things: inKeyOrder(things),
  };
}

type Side = {
  readonly things: ReadonlyMap<string, SiteThing>;
  /** Values that wait, by the key of their thing. */
  readonly others: ReadonlyMap<string, readonly unknown[]>;
};

type ShownSide = Side & {
  readonly turned: ReadonlySet<string>;
  readonly known: ReadonlyMap<string, StampedThing>;
};

/** `like`: a sound site, perhaps much the same, so that little has to be looked at. */
function shownIn(last: StampedSite | null, like: Site): ShownSide {
  if (last === null) return { things: new Map(), others: new Map(), turned: new Set(), known: new Map() };
  const view = viewSite(last, like);
  // one of another version is held against as it was written, one that shows nothing as it stands
  const site = view === null || view.site.version !== last.fixed.version ? unchecked(last) : view.site;
  const state = { site, others: view?.others ?? [], binnedAt: view?.binnedAt ?? null };
  return { ...shownOf(state), turned: view?.turned ?? new Set(), known: byKey(last) };
}

function shownOf({ site, others, binnedAt }: SiteState): Side {
  const things = new Map(thingsOf(site));
  if (binnedAt !== null) {
    const bin = { place: ['binnedAt'], is: 'thing', value: binnedAt } as const;
    things.set(keyOf(bin), bin);
  }
  const waiting = new Map<string, unknown[]>();
  for (const { place, other } of others) {
    const key = thingKey(place);
    waiting.set(key, [...(waiting.get(key) ?? []), other]);
  }
  return { things, others: waiting };
}

function changedKeys(before: ShownSide, after: Side): ReadonlySet<string> {
  const changed = new Set<string>();
  for (const key of new Set([...before.things.keys(), ...after.things.keys()]))
    if (!sameValue(before.things.get(key)?.value, after.things.get(key)?.value)) changed.add(key);
  for (const key of new Set([...before.others.keys(), ...after.others.keys()])) {
    const texts = (side: Side) => (side.others.get(key) ?? []).map(canonicalText).sort();
    if (!sameValue(texts(before), texts(after))) changed.add(key);
  }
  // what is there only because of a thing that was chosen about stands by itself from now on
  for (const key of before.turned) {
    const place = before.known.get(key)?.place ?? [];
    if (place.length === 4 && changed.has(thingKey(place.slice(0, 2)))) changed.add(key);
  }
  return changed;
}

type Change = {
  readonly now: unknown;
  readonly was: unknown;
  readonly wanted: readonly unknown[];
  /** What is shown is what stands. */
  readonly stands: boolean;
  readonly stamp: Pick<Stamped, 'by' | 'n'>;
};

function stampThing(
  old: readonly Stamped[],
  { now, was, wanted, stands, stamp }: Change,
): readonly Stamped[] {
  const top = old.length === 0 ? undefined : topOf({ place: [], is: 'thing', values: old });
  const current: Stamped | undefined =
    top !== undefined && stands && sameValue(top.is, now)
      ? top
      : {
          ...stamp,
          ...(now === undefined ? {} : { is: now }),
          ...(was === undefined || sameValue(was, now) ? {} : { was }),
        };
  const texts = new Set(wanted.map(canonicalText));
  texts.delete(canonicalText(now ?? null));
  const waiting = [...texts].flatMap((text): readonly Stamped[] => {
    const kept = old.filter((value) => canonicalText(value.is ?? null) === text);
    const other = wanted.find((each) => canonicalText(each) === text) ?? null;
    if (kept.length === 0) return [{ ...stamp, ...(other === null ? {} : { is: other }), beside: true }];
    // what waits beside nothing does not stand for it
    return now === undefined ? kept.map((value) => ({ ...value, beside: true as const })) : kept;
  });
  if (current.is === undefined && old.length === 0 && waiting.length === 0) return [];
  return inNameOrder([current, ...waiting]);
}
