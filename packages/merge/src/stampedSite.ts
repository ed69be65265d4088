import type { Site } from '@footmark/site';
import { canonicalText, inOrder, textsOnce } from './plainData';
import { keyOf, type SiteThing } from './siteThings';

/**
 * A value that somebody gave a thing, and when: the writer `by` and its count `n`, higher than every count that the writer had seen.
 * Without `is`: the thing was taken away. `was`: what stood there before. `beside`: it waits beside the thing, and was not its value.
 */
export type Stamped = {
  readonly by: string;
  readonly n: number;
  readonly is?: unknown;
  readonly was?: unknown;
  readonly beside?: true;
};

/** The values of a thing of which none was given by somebody who had seen another of them. */
export type StampedThing = Pick<SiteThing, 'place' | 'is'> & { readonly values: readonly Stamped[] };

/** What makes a site this one. */
export type FixedFacts = Pick<Site, 'format' | 'version' | 'id' | 'createdAt'>;

/**
 * A site with who gave each thing its value: as many states of it as one likes become one, in whatever order and however often they are
 * joined. Plain data. `seen`: all that a writer has stamped up to that count is in it, or was replaced by what is.
 *
 * A multi-value register for each thing with one version vector for all: C. Baquero et al., 'Dotted Version Vectors' (2012) and the
 * add-wins sets of A. Bieniusa et al., 'An Optimized Conflict-Free Replicated Set' (2012); names of works from memory.
 */
export type StampedSite = {
  readonly fixed: FixedFacts;
  readonly seen: Readonly<Record<string, number>>;
  /** In the order of their keys. */
  readonly things: readonly StampedThing[];
};

/** What two states have in them together; one of them itself when it has all of the other. */
export function join(a: StampedSite, b: StampedSite): StampedSite {
  if (a === b) return a;
  const [inA, inB] = [byKey(a), byKey(b)];
  const things = new Map<string, StampedThing>();
  for (const key of new Set([...inA.keys(), ...inB.keys()])) {
    const [own, other] = [inA.get(key), inB.get(key)];
    const values = joinValues(own?.values ?? [], other?.values ?? [], a.seen, b.seen);
    const { place, is } = own ?? other ?? {};
    if (place !== undefined && is !== undefined && values.length > 0)
      things.set(key, values === own?.values ? own : { place, is, values });
  }
  const writers = [...new Set([...Object.keys(a.seen), ...Object.keys(b.seen)])].sort();
  return {
    fixed: laterFixed(a.fixed, b.fixed),
    seen: Object.fromEntries(writers.map((by) => [by, Math.max(a.seen[by] ?? 0, b.seen[by] ?? 0)])),
    things: inKeyOrder(things),
  };
}

export function byKey({ things }: StampedSite): Map<string, StampedThing> {
  return new Map(things.map((thing) => [keyOf(thing), thing]));
}

export function inKeyOrder(things: ReadonlyMap<string, StampedThing>): readonly StampedThing[] {
  return [...things].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, thing]) => thing);
}

/** The highest count that is known in a state. */
export function highestCount({ seen }: Pick<StampedSite, 'seen'>): number {
  return Math.max(0, ...Object.values(seen));
}

export function sameStamped(a: StampedSite, b: StampedSite): boolean {
  return a === b || canonicalText(a) === canonicalText(b);
}

/** What only one side has stays if the other has not seen it: what it has seen and has no more was replaced there. */
function joinValues(
  a: readonly Stamped[],
  b: readonly Stamped[],
  seenByA: StampedSite['seen'],
  seenByB: StampedSite['seen'],
): readonly Stamped[] {
  if (a === b || (a.length === 1 && b.length === 1 && isSameStamp(a[0], b[0]))) return a;
  const inB = new Map(b.map((value) => [nameOf(value), value]));
  const inA = new Set(a.map(nameOf));
  const kept = a.flatMap((value): readonly Stamped[] => {
    const same = inB.get(nameOf(value));
    if (same !== undefined) return [same.beside === true ? same : value];
    return value.n > (seenByB[value.by] ?? 0) ? [value] : [];
  });
  const added = b.filter((value) => !inA.has(nameOf(value)) && value.n > (seenByA[value.by] ?? 0));
  const joined = inNameOrder([...kept, ...added]);
  return joined.length === a.length && joined.every((value, i) => value === a[i]) ? a : joined;
}

function isSameStamp(a: Stamped | undefined, b: Stamped | undefined): boolean {
  return a !== undefined && b !== undefined && a.beside === b.beside && a.by === b.by && a.n === b.n;
}

/** One writer's one count may give a thing a value and others that wait beside it. */
function nameOf({ by, n, is }: Stamped): string {
  return `${by} ${n} ${canonicalText(is ?? null)}`;
}

export function inNameOrder(values: readonly Stamped[]): readonly Stamped[] {
  const name = textsOnce(nameOf);
  return [...values].sort((a, b) => inOrder(name(a), name(b)));
}

function laterFixed(a: FixedFacts, b: FixedFacts): FixedFacts {
  if (a.version !== b.version) return a.version > b.version ? a : b;
  return canonicalText(a) <= canonicalText(b) ? a : b;
}
