import type { Place } from './place';
import { canonicalText, inOrder, textsOnce } from './plainData';
import { keyOf } from './siteThings';
import type { Stamped, StampedSite, StampedThing } from './stampedSite';

/** What may be shown of one thing, the first that which stands there by itself; undefined: it is away. */
export type Choices = readonly unknown[];

/** A thing or a list's order with what is known of it, and the things below it. */
export type Shelf = {
  readonly thing: StampedThing | null;
  readonly order: StampedThing | null;
  readonly below: ReadonlyMap<string, Shelf>;
};

type OpenShelf = { thing: StampedThing | null; order: StampedThing | null; below: Map<string, OpenShelf> };

/** The things of a stamped site by the steps of their places. */
export function shelvesOf({ things }: StampedSite): Shelf {
  const top: OpenShelf = { thing: null, order: null, below: new Map() };
  for (const thing of things) {
    let at = top;
    for (const step of thing.place) {
      const next = at.below.get(step) ?? { thing: null, order: null, below: new Map() };
      at.below.set(step, next);
      at = next;
    }
    if (thing.is === 'order') at.order = thing;
    else at.thing = thing;
  }
  return top;
}

/** Values that were put in rank before: they do not change, and are asked for with every look at their thing. */
const ranked = new WeakMap<readonly Stamped[], readonly Stamped[]>();

/** The value that stands: one that does not wait before one that does, any before none, then the latest. */
export function inRank(values: readonly Stamped[]): readonly Stamped[] {
  if (values.length < 2) return values;
  const known = ranked.get(values);
  if (known !== undefined) return known;
  const textOf = textsOnce<Stamped>(({ is }) => canonicalText(is ?? null));
  const sorted = [...values].sort((a, b) => byRank(a, b, textOf));
  ranked.set(values, sorted);
  return sorted;
}

function byRank(a: Stamped, b: Stamped, textOf: (of: Stamped) => string): number {
  const first = (is: boolean, other: boolean) => Number(other) - Number(is);
  return (
    first(a.beside !== true, b.beside !== true) ||
    first(a.is !== undefined, b.is !== undefined) ||
    later(a, b) ||
    inOrder(textOf(a), textOf(b))
  );
}

/** The later of two stamps first: by count, then by the writer's name. */
export function later(a: Stamped, b: Stamped): number {
  return b.n - a.n || (a.by === b.by ? 0 : a.by > b.by ? -1 : 1);
}

export function topOf({ values }: StampedThing): Stamped {
  const [top] = inRank(values);
  if (top === undefined) throw new RangeError('a thing has a value');
  return top;
}

/** What stands, what else was given, what was there before, what waits beside it, and at last nothing: each once. */
export function choicesOf({ values }: StampedThing): Choices {
  const ranked = inRank(values);
  const given = ranked.filter((value) => value.beside !== true);
  const waiting = ranked.filter((value) => value.beside === true);
  const before = given.map(({ was }) => was).filter((was) => was !== undefined);
  const seen = new Set<string>();
  return [...given.map(({ is }) => is), ...before, ...waiting.map(({ is }) => is), undefined].filter((is) => {
    const text = canonicalText(is ?? null);
    if (seen.has(text)) return false;
    seen.add(text);
    return true;
  });
}

export function thingKey(place: Place): string {
  return keyOf({ place, is: 'thing' });
}
