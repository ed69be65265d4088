import type { Site } from '@footmark/site';
import type { Place } from './place';
import { type Fields, isFields } from './plainData';
import { INSIDE, type Part, sitePart } from './siteParts';

/** A thing of a site with its value, or the order of a list: the names of what is in it. */
export type SiteThing = { readonly place: Place; readonly is: 'thing' | 'order'; readonly value: unknown };

/** One text for each thing and each order of a list. */
export function keyOf({ place, is }: Pick<SiteThing, 'place' | 'is'>): string {
  return `${is} ${JSON.stringify(place)}`;
}

/** All things of a site by their keys. A run is its facts without its readings, which are things of their own. */
export function thingsOf(site: Site): ReadonlyMap<string, SiteThing> {
  const found = new Map<string, SiteThing>();
  for (const thing of things(sitePart, site, [])) found.set(keyOf(thing), thing);
  return found;
}

function* things(part: Part, value: unknown, place: Place): Generator<SiteThing> {
  if (value === undefined) return;
  switch (part.is) {
    case 'fixed':
      return;
    case 'whole':
      yield { place, is: 'thing', value };
      return;
    case 'record':
      for (const [name, inner] of Object.entries(fieldsOf(value)))
        if (inner !== undefined) yield { place: [...place, name], is: 'thing', value: inner };
      return;
    case 'names':
      yield { place, is: 'order', value: namesOf(value) };
      for (const name of namesOf(value)) yield { place: [...place, name], is: 'thing', value: true };
      return;
    case 'fields':
      for (const [name, inner] of Object.entries(part.of))
        yield* things(inner, fieldsOf(value)[name], [...place, name]);
      return;
    case 'list':
      yield* thingsOfList(part, value, place);
  }
}

function* thingsOfList(
  { by, inside }: Extract<Part, { is: 'list' }>,
  value: unknown,
  place: Place,
): Generator<SiteThing> {
  const items = Array.isArray(value) ? value.filter(isFields) : [];
  yield { place, is: 'order', value: items.map((item) => String(item[by])) };
  for (const item of items) {
    const own = [...place, String(item[by])];
    if (inside === undefined) yield { place: own, is: 'thing', value: item };
    else {
      const { [inside]: list, ...facts } = item;
      yield { place: own, is: 'thing', value: facts };
      yield* things(INSIDE, list ?? [], [...own, inside]);
    }
  }
}

function fieldsOf(value: unknown): Fields {
  return isFields(value) ? value : {};
}

function namesOf(value: unknown): readonly string[] {
  return Array.isArray(value) ? value.filter((name) => typeof name === 'string') : [];
}
