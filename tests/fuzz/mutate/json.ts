import type { Dice } from '../../random/dice';
import type { Mutator } from '../reader';
import { upTo } from './bytes';
import { hostileTexts } from './hostile';
import { onText } from './texts';

type Holder = Record<string, unknown> | unknown[];

/** Values of every type, and those that are dear to nobody: objects that cannot become texts, keys that lead to the prototype. */
const OTHER_VALUES: readonly (() => unknown)[] = [
  () => null,
  () => true,
  () => 0,
  () => -1,
  () => -0,
  () => 1e308,
  () => 2 ** 53,
  () => '',
  () => 'f1',
  () => [],
  () => ({}),
  () => [[]],
  () => [null],
  () => ({ toString: 1, valueOf: 1 }),
  () => JSON.parse('{"__proto__":{"x":1}}') as unknown,
  () => ({ constructor: { prototype: 1 } }),
  () => ({ length: 4 }),
  () => '2026-02-30',
  () => '9999-12-31T23:59:59Z',
  () => '2026-06-01T14:05:00-05:00',
];

function holders(root: unknown): readonly Holder[] {
  const found: Holder[] = [];
  const ahead: unknown[] = [root];
  for (let one = ahead.pop(); one !== undefined || ahead.length > 0; one = ahead.pop()) {
    if (typeof one !== 'object' || one === null) continue;
    found.push(one as Holder); // an object that JSON made
    ahead.push(...Object.values(one).filter((v) => typeof v === 'object'));
  }
  return found;
}

const keysOf = (holder: Holder): readonly string[] => Object.keys(holder);
const read = (holder: Holder, key: string): unknown => Reflect.get(holder, key);
/** As an own property also where the key is that of the prototype. */
const put = (holder: Holder, key: string, value: unknown): void => {
  Object.defineProperty(holder, key, { value, enumerable: true, configurable: true, writable: true });
};

const CHANGES: readonly ((root: unknown, all: readonly Holder[], dice: Dice) => void)[] = [
  // drop
  (_, all, dice) => at(all, dice, (h, key) => (Array.isArray(h) ? h.splice(Number(key), 1) : delete h[key])),
  // retype
  (_, all, dice) => at(all, dice, (h, key) => put(h, key, dice.pick(OTHER_VALUES)())),
  (_, all, dice) => at(all, dice, (h, key) => put(h, key, dice.pick(hostileTexts))),
  // another key, one more key
  (_, all, dice) =>
    at(all, dice, (h, key) => {
      put(h, dice.pick([...hostileTexts, `${key} `, key.toUpperCase(), 'id', 'at', 'spot']), read(h, key));
      if (dice.next() < 0.5 && !Array.isArray(h)) delete h[key];
    }),
  // an item again, many times
  (_, all, dice) =>
    at(
      all.filter((h) => Array.isArray(h) && h.length > 0),
      dice,
      (h, key) => {
        const size = JSON.stringify(read(h, key)).length + 1;
        const times = Math.min(upTo(dice, 30_000), Math.ceil(500_000 / size));
        if (Array.isArray(h)) h.splice(Number(key), 0, ...new Array<unknown>(times).fill(read(h, key)));
      },
    ),
  // two values change places: ids, references, numbers, whole things
  (_, all, dice) =>
    at(all, dice, (h, key) => {
      const kind = typeof read(h, key);
      at(all, dice, (other, otherKey) => {
        if (
          typeof read(other, otherKey) !== kind ||
          holds(read(other, otherKey), h) ||
          holds(read(h, key), other)
        )
          return;
        const kept = read(h, key);
        put(h, key, read(other, otherKey));
        put(other, otherKey, kept);
      });
    }),
  // an id or a reference becomes another one
  (_, all, dice) => {
    const ids = all.flatMap((h) => keysOf(h).flatMap((k) => (isId(read(h, k)) ? [{ h, k }] : [])));
    if (ids.length === 0) return;
    const [one, other] = [dice.pick(ids), dice.pick(ids)];
    put(one.h, one.k, read(other.h, other.k));
  },
  // numbers
  (_, all, dice) => {
    const numbers = all.flatMap((h) =>
      keysOf(h).flatMap((k) => (typeof read(h, k) === 'number' ? [{ h, k }] : [])),
    );
    if (numbers.length === 0) return;
    const { h, k } = dice.pick(numbers);
    const was = Number(read(h, k));
    put(
      h,
      k,
      dice.pick([0, -was, was * 1e6, was + 1, Math.round(was), was / 3, 1e6, 1e15, 2 ** 53, 5e-324, 1e308]),
    );
  },
];

const isId = (value: unknown) => typeof value === 'string' && /^[\w-]{1,12}$/.test(value);

function holds(value: unknown, holder: Holder): boolean {
  return typeof value === 'object' && value !== null && holders(value).includes(holder);
}

function at(all: readonly Holder[], dice: Dice, change: (h: Holder, key: string) => unknown): void {
  const full = all.filter((h) => keysOf(h).length > 0);
  if (full.length === 0) return;
  const h = dice.pick(full);
  change(h, dice.pick(keysOf(h)));
}

/** A value that JSON gave, changed in one to three places; a copy. */
export function changedJson(value: unknown, dice: Dice): unknown {
  const root: unknown = structuredClone(value);
  for (let n = upTo(dice, 4); n > 0; n -= 1) {
    const found = holders(root);
    if (found.length < 20_000) dice.pick(CHANGES)(root, found, dice);
  }
  return root;
}

const grammar: Mutator = onText((text, dice) => {
  let value: unknown;
  try {
    value = JSON.parse(text);
    // the space of the seeds, or none
    return JSON.stringify(changedJson(value, dice), null, dice.pick([0, 2])) ?? text;
  } catch {
    return text; // another mutation was here before, or it lies too deep to be written
  }
});

/** A key twice: which one counts is not the same everywhere. */
const keyTwice: Mutator = onText((text, dice) => {
  const keys = [...text.matchAll(/"(\w+)"\s*:/g)];
  if (keys.length === 0) return text;
  const key = dice.pick(keys);
  return `${text.slice(0, key.index)}${key[0]} ${dice.pick(['null', '1', '"x"', '[]', '{}'])}, ${text.slice(key.index)}`;
});

export const jsonMutators: readonly Mutator[] = [grammar, grammar, grammar, grammar, keyTwice];
