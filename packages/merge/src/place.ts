import type { Site } from '@footmark/site';
import { type Fields, isFields } from './plainData';
import { INSIDE, type Part, sitePart } from './siteParts';

/** The way to a thing of a site: `['features', 'f3']`, `['runs', 'r1', 'readings', 'x4']`, `['digging', 'soil']`. */
export type Place = readonly string[];

/** The value at a place; undefined when nothing is there, or the place is none of a site's things. */
export function valueAt(site: Site, place: Place): unknown {
  return read(sitePart, site, place);
}

function read(part: Part, value: unknown, place: Place): unknown {
  const [name, ...rest] = place;
  if (name === undefined || value === undefined) return part.is === 'fixed' ? undefined : value;
  switch (part.is) {
    case 'fixed':
    case 'whole':
      return undefined;
    case 'record':
      return rest.length === 0 && isFields(value) ? value[name] : undefined;
    case 'names':
      return Array.isArray(value) && value.includes(name) ? true : undefined;
    case 'fields': {
      const inner = part.of[name];
      return inner === undefined || !isFields(value) ? undefined : read(inner, value[name], rest);
    }
    case 'list': {
      const item = itemsOf(value).find((each) => each[part.by] === name);
      if (rest.length === 0) return item;
      const [inside, ...further] = rest;
      return inside !== undefined && inside === part.inside
        ? read(INSIDE, item?.[inside], further)
        : undefined;
    }
  }
}

/**
 * The site with another value at a place: null or undefined takes the thing away. A run without its readings leaves those that are
 * there. A new thing comes last in its list. The site as it is when the place is none of its things.
 */
export function withVersion(site: Site, place: Place, value: unknown): Site {
  return write(sitePart, site, place, value ?? undefined) as Site; // the same parts, one of them another
}

function write(part: Part, value: unknown, place: Place, to: unknown): unknown {
  const [name, ...rest] = place;
  if (name === undefined) return part.is === 'fixed' ? value : to;
  switch (part.is) {
    case 'fixed':
    case 'whole':
      return value;
    case 'record':
      return isFields(value) && rest.length === 0 ? withField(value, name, to) : value;
    case 'names': {
      const names = Array.isArray(value) ? value.filter((each) => each !== name) : [];
      return to === undefined ? names : [...names, name];
    }
    case 'fields': {
      const inner = part.of[name];
      if (inner === undefined || !isFields(value)) return value;
      return withField(value, name, write(inner, value[name], rest, to));
    }
    case 'list':
      return withItem(part, itemsOf(value), place, to);
  }
}

function withItem(
  part: Extract<Part, { is: 'list' }>,
  items: readonly Fields[],
  [name, inside, ...further]: Place,
  to: unknown,
): readonly unknown[] {
  const at = items.findIndex((each) => each[part.by] === name);
  const old = items[at];
  if (inside !== undefined) {
    if (old === undefined || inside !== part.inside) return items;
    return items.with(at, { ...old, [inside]: write(INSIDE, old[inside], further, to) });
  }
  if (to === undefined) return items.filter((_, i) => i !== at);
  if (!isFields(to)) return items;
  const made = withInside(part, to, old);
  return old === undefined ? [...items, made] : items.with(at, made);
}

/** A list's item that came without the list inside it gets the one that is there. */
function withInside(part: Extract<Part, { is: 'list' }>, item: Fields, old: Fields | undefined): Fields {
  if (part.inside === undefined || part.inside in item) return item;
  return { ...item, [part.inside]: old?.[part.inside] ?? [] };
}

function withField(fields: Fields, name: string, to: unknown): Fields {
  if (to !== undefined) return { ...fields, [name]: to };
  const { [name]: _, ...rest } = fields;
  return rest;
}

export function itemsOf(value: unknown): readonly Fields[] {
  return Array.isArray(value) ? value.filter(isFields) : [];
}

/** The place of the thing in which a path through the file ends; null where it ends above every thing. */
export function placeOfPath(site: Site, path: readonly (string | number)[]): Place | null {
  return follow(sitePart, site, path);
}

function follow(part: Part, value: unknown, path: readonly (string | number)[]): Place | null {
  const [step, ...rest] = path;
  if (part.is === 'fixed') return null;
  if (part.is === 'whole') return [];
  if (step === undefined) return null;
  switch (part.is) {
    case 'record':
      return [String(step)];
    case 'names':
      return Array.isArray(value) && typeof step === 'number' ? [String(value[step])] : null;
    case 'fields': {
      const inner = part.of[step];
      if (inner === undefined || !isFields(value)) return null;
      const further = follow(inner, value[step], rest);
      return further === null ? null : [String(step), ...further];
    }
    case 'list': {
      const item = typeof step === 'number' ? itemsOf(value)[step] : undefined;
      if (item === undefined) return null;
      const own = [String(item[part.by])];
      if (part.inside === undefined || rest[0] !== part.inside) return own;
      const further = follow(INSIDE, item[part.inside], rest.slice(1));
      return further === null ? own : [...own, part.inside, ...further];
    }
  }
}
