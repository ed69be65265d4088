import { sameValue } from '@footmark/site';
import { mergeOrder } from './mergeOrder';
import { type Fields, isFields } from './plainData';
import { inRank, type Shelf } from './shelves';
import { INSIDE, type Part, sitePart } from './siteParts';
import type { FixedFacts, StampedThing } from './stampedSite';

/** What is shown of a thing; undefined: it is away. */
export type Shown = (thing: StampedThing) => unknown;

/**
 * The site of what is shown, unchecked: it may be none that can be opened. Parts that are as in `like` are the same objects.
 */
export function buildSite(shelves: Shelf, fixed: FixedFacts, shown: Shown, like: unknown): unknown {
  return build(sitePart, shelves, { fixed, shown, like });
}

type Making = { readonly fixed: FixedFacts | null; readonly shown: Shown; readonly like: unknown };

function build(part: Part, shelf: Shelf | undefined, making: Making): unknown {
  const { shown, like } = making;
  switch (part.is) {
    case 'fixed':
      return undefined;
    case 'whole':
      return shownOn(shelf, making);
    case 'record': {
      const entries = [...(shelf?.below ?? [])].map(
        ([name, inner]) => [name, shownOn(inner, { ...making, like: fieldOf(like, name) })] as const,
      );
      return likeFields(entries, like);
    }
    case 'names': {
      const named = [...(shelf?.below ?? [])].filter(
        ([, { thing }]) => thing !== null && shown(thing) === true,
      );
      return likeValue(orderOf(shelf?.order ?? null, new Set(named.map(([name]) => name))), like);
    }
    case 'fields': {
      const fixed = Object.entries(making.fixed ?? {});
      const rest = Object.entries(part.of).map(
        ([name, inner]) =>
          [
            name,
            build(inner, shelf?.below.get(name), { shown, fixed: null, like: fieldOf(like, name) }),
          ] as const,
      );
      return likeFields([...fixed, ...rest.filter(([name]) => !fixed.some(([is]) => is === name))], like);
    }
    case 'list':
      return buildList(part, shelf, making);
  }
}

function buildList(
  { by, inside }: Extract<Part, { is: 'list' }>,
  shelf: Shelf | undefined,
  { shown, like }: Making,
): readonly unknown[] {
  const old = new Map(
    (Array.isArray(like) ? like.filter(isFields) : []).map((item) => [String(item[by]), item]),
  );
  const items = new Map<string, unknown>();
  for (const [name, inner] of shelf?.below ?? []) {
    const made = { shown, fixed: null, like: old.get(name) };
    const facts = inner.thing === null ? undefined : shown(inner.thing);
    if (!isFields(facts) || String(facts[by]) !== name) continue;
    if (inside === undefined) items.set(name, likeValue(facts, made.like));
    else {
      const list = build(INSIDE, inner.below.get(inside), { ...made, like: fieldOf(made.like, inside) });
      items.set(name, likeFields([...Object.entries({ ...facts, [inside]: list })], made.like));
    }
  }
  const order = orderOf(shelf?.order ?? null, new Set(items.keys()));
  const list = order.map((name) => items.get(name));
  return Array.isArray(like) && like.length === list.length && list.every((item, i) => item === like[i])
    ? like
    : list;
}

/** The latest order with what only the others have put where it stands in them, and what none has at the end. */
function orderOf(thing: StampedThing | null, kept: ReadonlySet<string>): readonly string[] {
  const orders = inRank(thing?.values ?? []).map(({ is }) =>
    Array.isArray(is) ? is.filter((name) => typeof name === 'string') : [],
  );
  const made = orders.reduce<readonly string[]>((first, other) => mergeOrder(first, other, kept), []);
  const placed = new Set(made);
  return [...made, ...[...kept].filter((name) => !placed.has(name)).sort()];
}

function shownOn(shelf: Shelf | undefined, { shown, like }: Making): unknown {
  return shelf === undefined || shelf.thing === null ? undefined : likeValue(shown(shelf.thing), like);
}

function fieldOf(value: unknown, name: string): unknown {
  return isFields(value) ? value[name] : undefined;
}

function likeValue(value: unknown, like: unknown): unknown {
  return sameValue(value, like) ? like : value;
}

function likeFields(entries: readonly (readonly [string, unknown])[], like: unknown): Fields {
  const made: Fields = Object.fromEntries(entries.filter(([, value]) => value !== undefined));
  if (!isFields(like) || Object.keys(like).length !== Object.keys(made).length) return made;
  for (const [name, value] of Object.entries(made)) if (!sameValue(value, like[name])) return made;
  return like;
}
