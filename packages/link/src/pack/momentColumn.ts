import { codeBits, codeCount } from '../coder/symbols';
import { codeLiteral } from './literalText';
import { type Column, inside } from './walk';

/** A text as it is, or counted from the beginning of 1970 in whole days, seconds or milliseconds. */
const LITERAL = 0;
const DAYS = 1;
const SECONDS = 2;
const MILLISECONDS = 3;

/** Milliseconds to one; the language knows no day further than this from 1970 (ECMA-262, time range; from memory). */
const UNIT_MS: Readonly<Record<number, number>> = { [DAYS]: 86_400_000, [SECONDS]: 1000, [MILLISECONDS]: 1 };
const LAST_MS = 8.64e15;

const ALL_WAYS = inside(0, 'moment');
const ALL_MOMENTS = [0, 1, 2, 3].map((way) => inside(way, 'moments'));

/** Days and instants as texts of ISO 8601 in UTC, as a computer prints them; whatever else stands there goes as a text. */
export const momentColumn: Column<string> = ({ coder }, context, count, given) => {
  const found: string[] = [];
  for (let i = 0; i < count && !coder.failed; i++) {
    const mine = given?.[i] ?? '';
    const wanted = wayOf(mine);
    const way = codeBits(coder, [ALL_WAYS, inside(context, 'moment')], 2, wanted);
    if (way === LITERAL) {
      found.push(codeLiteral(coder, mine));
      continue;
    }
    const unit = UNIT_MS[way] ?? 1;
    const counted = codeCount(coder, [ALL_MOMENTS[way] ?? 0], way === wanted ? Date.parse(mine) / unit : 0);
    if (counted * unit > LAST_MS) coder.fail();
    else found.push(textAt(counted * unit, way));
  }
  return found;
};

function wayOf(text: string): number {
  const at = Date.parse(text);
  if (!(at >= 0)) return LITERAL; // also what is no date
  return (
    [DAYS, SECONDS, MILLISECONDS].find((way) => at % (UNIT_MS[way] ?? 1) === 0 && textAt(at, way) === text) ??
    LITERAL
  );
}

function textAt(at: number, way: number): string {
  const text = new Date(at).toISOString();
  if (way === DAYS) return text.replace(/T.*/, '');
  return way === SECONDS ? text.replace(/\.\d+Z$/, 'Z') : text;
}
