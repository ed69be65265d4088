import type { Site } from '../document/site';

/**
 * A named, pure change of a site: the unit of undo, of tests and of the change log. It keeps the site sound (ids unique, no
 * name that leads nowhere) and throws on arguments that name things the site does not have, which is a programmer's mistake.
 */
export type Edit<Args> = (site: Site, args: Args) => Site;

/** Thrown for a name that the site does not have. */
export function unknown(what: string, id: string): never {
  throw new Error(`no ${what} ${id} in the site`);
}

/** A copy of `list` with the item of that id replaced by `change(item)`. */
export function changeById<Item extends { readonly id: string }>(
  list: readonly Item[],
  id: string,
  what: string,
  change: (item: Item) => Item,
): Item[] {
  const index = list.findIndex((item) => item.id === id);
  const found = list[index];
  if (found === undefined) return unknown(what, id);
  return list.with(index, change(found));
}
