import { FOOT_M, formatLength, INCH_M, type SearchZone, type Units } from '@footmark/site';
import type { SayLess } from './sayLess';

/** The steps (m) in which it makes sense to say how unsure something is. */
const SURE_STEP_M: Record<Units['length'], number> = { 'ft-in': INCH_M, ft: 0.1 * FOOT_M, m: 0.01 };

/** A hole is dug to half a foot or a tenth of a metre, and rounded up so that it still holds what it is to hold. */
const HOLE_STEP_M: Record<Units['length'], number> = { 'ft-in': FOOT_M / 2, ft: FOOT_M / 2, m: 0.1 };

/** A whole number of steps stays what it is. */
const ROUNDING = 1e-6;

type SureText = (metres: number, units: Pick<Units, 'length'>) => string;

/** A length (m) that says how unsure or how far off something is, as coarse as such numbers are: `0.8 ft`, `9″`, `0.24 m`. */
export function sureTextIn(less: SayLess): SureText {
  return (metres, units) => {
    const { below, text } = coarse(metres, units.length);
    return below ? less(text) : text;
  };
}

/** The same beside the number that it is about: `± 0.8 ft`; what is below a step has no sign. */
export function giveOrTakeTextIn(less: SayLess): SureText {
  return (metres, units) => {
    const { below, text } = coarse(metres, units.length);
    return below ? less(text) : `± ${text}`;
  };
}

/** In steps of such lengths; `below`: it is less than what the text says, the smallest step. */
function coarse(metres: number, length: Units['length']): { readonly below: boolean; readonly text: string } {
  const step = SURE_STEP_M[length];
  const size = Math.abs(metres);
  const below = size > 0 && size < step / 2;
  return { below, text: printed(below ? step : size, length) };
}

/** A hole along the pipe and across it, rounded up: `2½ × 4 ft`, `2.5 × 4 ft`, `0.8 × 1.2 m`. */
export function holeSizeText({ length, width }: SearchZone['hole'], units: Pick<Units, 'length'>): string {
  const [along, across] = [length, width].map((size) => holeSideText(size, units.length));
  return `${along} × ${across} ${units.length === 'm' ? 'm' : 'ft'}`;
}

function holeSideText(size: number, length: Units['length']): string {
  const step = HOLE_STEP_M[length];
  const steps = Math.ceil(size / step - ROUNDING);
  if (length === 'm') return String(steps / 10);
  if (length === 'ft') return String(steps / 2);
  return steps % 2 === 0 ? String(steps / 2) : `${steps > 1 ? Math.floor(steps / 2) : ''}½`;
}

function printed(metres: number, length: Units['length']): string {
  return length === 'ft-in'
    ? formatLength(metres, length, { denominator: 1 })
    : formatLength(metres, length, { decimals: length === 'm' ? 2 : 1 });
}
