import { mix } from '../coder/bitModel';
import { codeBits, codeCount } from '../coder/symbols';
import { codeLiteral } from './literalText';
import { nextText } from './nextText';
import { type Column, inside, type Walk } from './walk';

/**
 * How a text is told: letter by letter; as the random name that a device gives, a letter and twelve hexadecimal digits; as the one that
 * counting leads to after the text before it in the column; as one that came by before.
 */
const LITERAL = 0;
const RANDOM = 1;
const NEXT = 2;
const KNOWN = 3;

const RANDOM_NAME = /^[a-z][0-9a-f]{12}$/;

/** Contexts that all columns share. */
const ALL_WAYS = inside(0, 'way');
const ALL_PLACES = inside(0, 'place');
const ALL_FIRSTS = inside(0, 'first');

/** Texts and names. What was named before is told by its place in the list of all texts so far. */
export const textColumn: Column<string> = (walk, context, count, given) => {
  const { coder, texts } = walk;
  const found: string[] = [];
  const wayContext = inside(context, 'way');
  const placeContext = inside(context, 'place');
  let text = '';
  let [before, beforeThat] = [0, 0];
  for (let i = 0; i < count && !coder.failed; i++) {
    const mine = given?.[i] ?? '';
    const known = given === null ? undefined : texts.placeOf(mine);
    const after = mix(wayContext, before);
    const ways = [ALL_WAYS, wayContext, after, mix(after, beforeThat)];
    const way = codeBits(coder, ways, 2, wayOf(mine, known, text));
    beforeThat = before;
    before = way;
    if (way === KNOWN) {
      const place = codeCount(
        coder,
        [
          ALL_PLACES,
          placeContext,
          mix(placeContext, 1 + beforeThat),
          mix(inside(placeContext, 'after'), texts.placeOf(text) ?? -1),
        ],
        known ?? 0,
      );
      before = KNOWN + 1 + place;
      text = texts.at(place) ?? failed(walk);
    } else if (way === NEXT) text = nextText(text) ?? failed(walk);
    else text = way === RANDOM ? codeRandom(walk, context, mine) : codeLiteral(coder, mine);
    texts.add(text);
    found.push(text);
  }
  return found;
};

function wayOf(text: string, known: number | undefined, before: string): number {
  if (known !== undefined) return KNOWN;
  if (nextText(before) === text) return NEXT;
  return RANDOM_NAME.test(text) ? RANDOM : LITERAL;
}

function codeRandom({ coder }: Walk, context: number, given: string): string {
  const first = codeBits(coder, [ALL_FIRSTS, inside(context, 'first')], 7, given.charCodeAt(0) || 0);
  let text = String.fromCharCode(first);
  for (let i = 1; i <= 12; i++) {
    text += codeBits(coder, [], 4, Number.parseInt(given.charAt(i), 16) || 0).toString(16);
  }
  return text;
}

function failed(walk: Walk): string {
  walk.coder.fail();
  return '';
}
