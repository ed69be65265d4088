import { mix } from '../coder/bitModel';
import { codeCount } from '../coder/symbols';
import { type Listed, nodeAt, type ShapeKey, type ShapeNode } from '../shape/shape';
import { choiceColumn, flagColumn } from './choiceColumn';
import { momentColumn } from './momentColumn';
import { numberColumn } from './numberColumn';
import { textColumn } from './textColumn';
import { inside, type Walk } from './walk';

type Properties = Record<string, unknown>;

const ALL_PRESENT = inside(0, 'present');

/**
 * All values at one place of a document's shape, in order. Records are taken apart: first all their first properties, then all their
 * second, so that like stands beside like. Given values fit the shape; read ones fit it too, unless the coder failed.
 */
export function codeColumn(
  walk: Walk,
  index: number,
  context: number,
  count: number,
  given: readonly unknown[] | null,
): unknown[] {
  if (count === 0 || walk.coder.failed) return [];
  const node = nodeAt(walk.shape, index);
  switch (node.is) {
    case 'object':
      return codeRecords(walk, context, [{ keys: node.keys }], new Array(count).fill(0), given);
    case 'union':
      return codeUnion(walk, node, context, count, given);
    case 'list':
      return codeLists(walk, node.of, context, count, given as readonly unknown[][] | null); // the shape says so, here and below
    case 'record':
      return codeNamed(walk, node.of, context, count, given as readonly Properties[] | null);
    case 'or-null': {
      const there = flagColumn(walk, inside(context, 'null'), count, given?.map((v) => v !== null) ?? null);
      const inner = given?.filter((v) => v !== null) ?? null;
      const values = codeColumn(walk, node.of, context, there.filter(Boolean).length, inner);
      return spread(there, values, null);
    }
    case 'one-of': {
      const places = given?.map((v) => node.values.indexOf(v as Listed)) ?? null;
      const things = node.values.length;
      return choiceColumn(walk, context, { things, count, given: places }).map((at) => node.values[at]);
    }
    case 'flag':
      return flagColumn(walk, context, count, given as readonly boolean[] | null);
    case 'number':
      return numberColumn(walk, context, count, given as readonly number[] | null);
    case 'text':
      return textColumn(walk, context, count, given as readonly string[] | null);
    case 'day':
    case 'instant':
      return momentColumn(walk, context, count, given as readonly string[] | null);
  }
}

function codeUnion(
  walk: Walk,
  { tag, options }: Extract<ShapeNode, { is: 'union' }>,
  context: number,
  count: number,
  given: readonly unknown[] | null,
): unknown[] {
  const tags = options.flatMap((option, at) => option.tags.map((value) => ({ value, at })));
  const wanted = given?.map((v) => tags.findIndex(({ value }) => value === (v as Properties)[tag])) ?? null;
  const places = choiceColumn(walk, inside(context, tag), { things: tags.length, count, given: wanted });
  const which = places.map((place) => tags[place]?.at ?? 0);
  const records = codeRecords(walk, context, options, which, given);
  return records.map((record, i) => ({ [tag]: tags[places[i] ?? 0]?.value, ...record }));
}

/**
 * Records of several kinds, `which` says of what kind each is. A property that several kinds have alike is one column for all of them.
 */
function codeRecords(
  walk: Walk,
  context: number,
  kinds: readonly { readonly keys: readonly ShapeKey[] }[],
  which: readonly number[],
  given: readonly unknown[] | null,
): Properties[] {
  const shared = new Map<string, { readonly key: ShapeKey; readonly kinds: Set<number> }>();
  for (const [at, { keys }] of kinds.entries()) {
    for (const key of keys) {
      const name = key.join(' ');
      const column = shared.get(name) ?? { key, kinds: new Set() };
      column.kinds.add(at);
      shared.set(name, column);
    }
  }
  const records = which.map((): Properties => ({}));
  for (const { key, kinds: having } of shared.values()) {
    const [name, node, optional] = key;
    const mine = [...which.keys()].filter((i) => having.has(which[i] ?? 0));
    const values = given === null ? null : mine.map((i) => (given[i] as Properties)[name]);
    if (optional === 0 && values?.every(isThere) === false) throw new RangeError(`${name} is missing`);
    const own = inside(context, name);
    const there =
      optional === 0
        ? mine.map(() => true)
        : flagColumn(walk, inside(own, 'present'), mine.length, values?.map(isThere) ?? null, [ALL_PRESENT]);
    const found = codeColumn(walk, node, own, there.filter(Boolean).length, values?.filter(isThere) ?? null);
    let next = 0;
    for (const [k, i] of mine.entries()) {
      const record = records[i];
      if (there[k] === true && record !== undefined) record[name] = found[next++];
    }
  }
  return records;
}

/** Lists: how long each is, then all their items. */
function codeLists(
  walk: Walk,
  of: number,
  context: number,
  count: number,
  given: readonly (readonly unknown[])[] | null,
): unknown[][] {
  const lengths = codeLengths(walk, context, count, given?.map((list) => list.length) ?? null);
  const all = lengths.reduce((sum, n) => sum + n, 0);
  const items = codeColumn(walk, of, inside(context, 'item'), all, given?.flat(1) ?? null);
  let from = 0;
  return lengths.map((length) => {
    from += length;
    return items.slice(from - length, from);
  });
}

/** Records with names of any kind: how many each has, then all names, then what stands at them. */
function codeNamed(
  walk: Walk,
  of: number,
  context: number,
  count: number,
  given: readonly Properties[] | null,
): Properties[] {
  const entries = given?.map((record) => Object.entries(record)) ?? null;
  const lengths = codeLengths(walk, context, count, entries?.map((list) => list.length) ?? null);
  const all = lengths.reduce((sum, n) => sum + n, 0);
  const flat = entries?.flat(1) ?? null;
  const names = textColumn(walk, inside(context, 'name'), all, flat?.map(([name]) => name) ?? null);
  const values = codeColumn(walk, of, inside(context, 'item'), all, flat?.map(([, value]) => value) ?? null);
  let from = 0;
  return lengths.map((length) => {
    from += length;
    return Object.fromEntries(
      names.slice(from - length, from).map((name, i) => [name, values[from - length + i]]),
    );
  });
}

/** Fails when there are more items than may be left, before any room is made for them. */
function codeLengths(walk: Walk, context: number, count: number, given: readonly number[] | null): number[] {
  const own = inside(context, 'length');
  const lengths: number[] = [];
  let before = 0;
  for (let i = 0; i < count && !walk.coder.failed; i++) {
    const length = codeCount(walk.coder, [own, mix(own, before + 1)], given?.[i] ?? 0);
    walk.itemsLeft -= length;
    if (walk.itemsLeft < 0) walk.coder.stop();
    lengths.push(length);
    before = length;
  }
  return walk.coder.failed ? [] : lengths;
}

function isThere(value: unknown): boolean {
  return value !== undefined;
}

/** The values in their order where one is there, else what stands for none. */
function spread(there: readonly boolean[], values: readonly unknown[], none: unknown): unknown[] {
  let next = 0;
  return there.map((flag) => (flag ? values[next++] : none));
}
