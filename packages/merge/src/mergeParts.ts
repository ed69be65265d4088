import { mergeOrder } from './mergeOrder';
import { itemsOf, type Place } from './place';
import { type Fields, isFields, sameValue } from './sameValue';
import { INSIDE, type Part } from './siteParts';

/** Another value of the thing at a place, null: it was taken away there. */
export type OtherVersion = { readonly place: Place; readonly other: unknown };

/** Stands for a base that nobody knows: nothing in it is known to have been there, or not. */
export const UNKNOWN = Symbol('unknown base');

type Sides = { readonly base: unknown; readonly mine: unknown; readonly theirs: unknown };

/** Merges one part of two sites; what is their other version of a thing goes into `others`. Undefined: it is not there. */
export function mergeParts(part: Part, sides: Sides, place: Place, others: OtherVersion[]): unknown {
  const { base, mine, theirs } = sides;
  switch (part.is) {
    case 'fixed':
      return mine;
    case 'whole':
      return mergeWhole(sides, place, others);
    case 'fields':
    case 'record':
      return mergeFields(part, sides, place, others);
    case 'names': {
      const [m, t] = [namesOf(mine), namesOf(theirs)];
      const b = base === UNKNOWN ? null : namesOf(base);
      const kept = new Set([...m, ...t].filter((name) => staysName(name, b, m, t)));
      return sameOr(mine, mergeOrder(b, m, t, kept));
    }
    case 'list':
      return mergeList(part, sides, place, others);
  }
}

function mergeWhole({ base, mine, theirs }: Sides, place: Place, others: OtherVersion[]): unknown {
  if (sameValue(mine, theirs)) return mine;
  if (base === UNKNOWN) {
    if (mine === undefined) return theirs;
    if (theirs === undefined) return mine;
  } else {
    if (sameValue(base, mine)) return theirs;
    if (sameValue(base, theirs)) return mine;
  }
  // what was changed on one side and taken away on the other stays
  const [kept, other] = mine === undefined ? [theirs, mine] : [mine, theirs];
  others.push({ place, other: other ?? null });
  return kept;
}

function mergeFields(
  part: Extract<Part, { is: 'fields' | 'record' }>,
  sides: Sides,
  place: Place,
  others: OtherVersion[],
): unknown {
  const [base, mine, theirs] = [fieldsOf(sides.base), fieldsOf(sides.mine), fieldsOf(sides.theirs)];
  const names =
    part.is === 'fields'
      ? Object.keys(part.of)
      : [...new Set([...Object.keys(mine), ...Object.keys(theirs)])];
  const made: Record<string, unknown> = {};
  for (const name of names) {
    const inner: Part = (part.is === 'fields' ? part.of[name] : undefined) ?? { is: 'whole' };
    const value = mergeParts(
      inner,
      {
        base: sides.base === UNKNOWN ? UNKNOWN : base[name],
        mine: mine[name],
        theirs: theirs[name],
      },
      [...place, name],
      others,
    );
    if (value !== undefined) made[name] = value;
  }
  const asMine =
    Object.keys(made).length === Object.keys(mine).length && names.every((name) => made[name] === mine[name]);
  return asMine ? sides.mine : made;
}

function mergeList(
  part: Extract<Part, { is: 'list' }>,
  sides: Sides,
  place: Place,
  others: OtherVersion[],
): unknown {
  const nameOf = (item: Fields) => String(item[part.by]);
  const byName = (value: unknown) => new Map(itemsOf(value).map((item) => [nameOf(item), item]));
  const base = sides.base === UNKNOWN ? null : byName(sides.base);
  const [mine, theirs] = [byName(sides.mine), byName(sides.theirs)];
  const made = new Map<string, unknown>();
  for (const name of new Set([...mine.keys(), ...theirs.keys()])) {
    const of = {
      base: base === null ? UNKNOWN : base.get(name),
      mine: mine.get(name),
      theirs: theirs.get(name),
    };
    const item = mergeItem(part, of, [...place, name], others);
    if (item !== undefined) made.set(name, item);
  }
  const order = mergeOrder(
    base === null ? null : [...base.keys()],
    [...mine.keys()],
    [...theirs.keys()],
    new Set(made.keys()),
  );
  return sameOr(
    sides.mine,
    order.map((name) => made.get(name)),
  );
}

/** An item that both have, with a list inside, is merged apart from that list; else it is one thing with all that is in it. */
function mergeItem(
  part: Extract<Part, { is: 'list' }>,
  sides: Sides,
  place: Place,
  others: OtherVersion[],
): unknown {
  const { base, mine, theirs } = sides;
  const { inside } = part;
  if (inside === undefined || !isFields(mine) || !isFields(theirs)) return mergeWhole(sides, place, others);
  const own = (item: unknown) => (isFields(item) ? without(item, inside) : item);
  const listIn = (item: unknown) => (item === UNKNOWN ? UNKNOWN : fieldsOf(item)[inside]);
  const facts = mergeWhole({ base: own(base), mine: own(mine), theirs: own(theirs) }, place, others);
  const list = mergeParts(
    INSIDE,
    { base: listIn(base), mine: mine[inside], theirs: theirs[inside] },
    [...place, inside],
    others,
  );
  if (list === mine[inside] && sameValue(facts, own(mine))) return mine;
  return { ...fieldsOf(facts), [inside]: list };
}

function staysName(
  name: string,
  base: readonly string[] | null,
  mine: readonly string[],
  theirs: readonly string[],
): boolean {
  if (mine.includes(name) && theirs.includes(name)) return true;
  return base === null || !base.includes(name);
}

function sameOr(mine: unknown, made: readonly unknown[]): unknown {
  return Array.isArray(mine) && mine.length === made.length && made.every((item, i) => item === mine[i])
    ? mine
    : made;
}

function without(fields: Fields, name: string): Fields {
  const { [name]: _, ...rest } = fields;
  return rest;
}

function fieldsOf(value: unknown): Fields {
  return isFields(value) ? value : {};
}

function namesOf(value: unknown): readonly string[] {
  return Array.isArray(value) ? value.filter((name) => typeof name === 'string') : [];
}
