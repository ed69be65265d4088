import { type Site, sameValue } from '@footmark/site';
import { itemsOf, type Place } from './place';
import { type Fields, isFields } from './plainData';
import { INSIDE, type Part, sitePart } from './siteParts';

/** A thing that two states of a site have otherwise; undefined: it is not in that state. */
export type SiteChange = { readonly place: Place; readonly before: unknown; readonly after: unknown };

/** The things that differ between two states of a site, in the order of the file. The order within lists is not looked at. */
export function changesBetween(before: Site, after: Site): readonly SiteChange[] {
  return [...changes(sitePart, before, after, [])];
}

function* changes(part: Part, before: unknown, after: unknown, place: Place): Generator<SiteChange> {
  if (before === after || part.is === 'fixed') return;
  switch (part.is) {
    case 'whole':
      if (!sameValue(before, after)) yield { place, before, after };
      return;
    case 'names':
    case 'record': {
      const [b, a] = part.is === 'names' ? [flags(before), flags(after)] : [fields(before), fields(after)];
      for (const name of new Set([...Object.keys(b), ...Object.keys(a)]))
        yield* changes({ is: 'whole' }, b[name], a[name], [...place, name]);
      return;
    }
    case 'fields':
      for (const [name, inner] of Object.entries(part.of))
        yield* changes(inner, fields(before)[name], fields(after)[name], [...place, name]);
      return;
    case 'list': {
      const byName = (value: unknown) => new Map(itemsOf(value).map((item) => [String(item[part.by]), item]));
      const [b, a] = [byName(before), byName(after)];
      for (const name of new Set([...b.keys(), ...a.keys()]))
        yield* changesOfItem(part, b.get(name), a.get(name), [...place, name]);
    }
  }
}

function* changesOfItem(
  { inside }: Extract<Part, { is: 'list' }>,
  before: Fields | undefined,
  after: Fields | undefined,
  place: Place,
): Generator<SiteChange> {
  if (inside === undefined || before === undefined || after === undefined) {
    yield* changes({ is: 'whole' }, before, after, place);
    return;
  }
  const { [inside]: listBefore, ...factsBefore } = before;
  const { [inside]: listAfter, ...factsAfter } = after;
  yield* changes({ is: 'whole' }, factsBefore, factsAfter, place);
  yield* changes(INSIDE, listBefore, listAfter, [...place, inside]);
}

function fields(value: unknown): Fields {
  return isFields(value) ? value : {};
}

function flags(names: unknown): Fields {
  return Array.isArray(names) ? Object.fromEntries(names.map((name) => [String(name), true])) : {};
}
