import type { Dice } from '../../random/dice';
import { bytesOf, type Mutator, textOf } from '../reader';
import { below, MOST_BYTES, upTo } from './bytes';
import { extremeNumbers, hostileTexts } from './hostile';

/** A mutation of a text as one of bytes; halves of characters do not survive it. */
export function onText(change: (text: string, dice: Dice, seeds: readonly Uint8Array[]) => string): Mutator {
  return (input, dice, seeds) => bytesOf(change(textOf(input), dice, seeds));
}

/** Texts of items, joined, as many of them as have room: an item that is long already may have been put in very many times. */
export function joinedWithin<Item>(
  most: number,
  items: readonly Item[],
  between: string,
  write: (item: Item) => string,
): string {
  const texts: string[] = [];
  let length = 0;
  for (const item of items) {
    const text = write(item);
    length += text.length + between.length;
    if (length > most) break;
    texts.push(text);
  }
  return texts.join(between);
}

/** The text with one of what the pattern finds, drawn by the dice, changed. */
export function oneOf(text: string, pattern: RegExp, dice: Dice, change: (found: string) => string): string {
  const found = [...text.matchAll(pattern)];
  if (found.length === 0) return text;
  const match = dice.pick(found);
  return text.slice(0, match.index) + change(match[0]) + text.slice(match.index + match[0].length);
}

const NUMBER = /-?\d+(\.\d+)?([eE][+-]?\d+)?/g;

const extremeNumber = onText((text, dice) => oneOf(text, NUMBER, dice, () => dice.pick(extremeNumbers)));

/** Every number that is the same: coordinates of a thing, its id. */
const extremeEverywhere = onText((text, dice) => {
  const found = [...text.matchAll(NUMBER)];
  if (found.length === 0) return text;
  const [number] = dice.pick(found);
  return text.replaceAll(number, dice.pick(extremeNumbers)).slice(0, MOST_BYTES);
});

const hostile = onText((text, dice) => {
  const at = below(dice, text.length + 1);
  return text.slice(0, at) + dice.pick(hostileTexts) + text.slice(at);
});

/** In the middle of a word, where names stand. */
const hostileWord = onText((text, dice) => oneOf(text, /[A-Za-z]{3,}/g, dice, () => dice.pick(hostileTexts)));

const longText = onText((text, dice) => {
  const piece = dice.pick(['x', ' ', '0', '9', '\n', '\t', ',', '"', '-', 'é', '𝄞', 'a b', ...hostileTexts]);
  const at = below(dice, text.length + 1);
  return text.slice(0, at) + piece.repeat(upTo(dice, 200_000 / piece.length)) + text.slice(at);
});

const OPENERS: readonly (readonly [string, string])[] = [
  ['[', ']'],
  ['{"a":', '}'],
  ['[[', ']]'],
  ['{"type":"GeometryCollection","geometries":[', ']}'],
  ['<a>', '</a>'],
  ['<Folder>', '</Folder>'],
  ['<MultiGeometry>', '</MultiGeometry>'],
  ['(', ')'],
  ['"', '"'],
];

const deeplyNested = onText((text, dice) => {
  const [open, close] = dice.pick(OPENERS);
  const depth = upTo(dice, 20_000);
  const at = below(dice, text.length + 1);
  const to = at + upTo(dice, text.length - at + 1);
  const closed = dice.next() < 0.8 ? close.repeat(depth) : '';
  return text.slice(0, at) + open.repeat(depth) + text.slice(at, to) + closed + text.slice(to);
});

const lines = onText((text, dice) => {
  const all = text.split('\n');
  const [a, b] = [below(dice, all.length), below(dice, all.length)];
  const count = upTo(dice, 6);
  const moved = all.slice(a, a + count);
  if (dice.next() < 0.4) all.splice(a, count);
  all.splice(b, dice.next() < 0.3 ? count : 0, ...moved);
  return all.join(dice.pick(['\n', '\n', '\n', '\r\n', '\r']));
});

export const textMutators: readonly Mutator[] = [
  extremeNumber,
  extremeNumber,
  extremeEverywhere,
  hostile,
  hostileWord,
  longText,
  deeplyNested,
  lines,
];
