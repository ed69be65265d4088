import { mix } from '../coder/bitModel';
import { codeBits, codeCount } from '../coder/symbols';
import { type Counted, chooseUnits } from './chooseUnits';
import { NO_UNIT, numberUnits, UNIT_BITS } from './numberUnits';
import { type Column, inside, type Walk } from './walk';

/** Contexts that all columns share. */
const ALL_STEPPED = inside(0, 'stepped');
const ALL_UNITS = inside(0, 'unit');
const ALL_SIGNS = inside(0, 'sign');
const ALL_COUNTS = inside(0, 'count');
const ALL_STEPS = inside(0, 'step');

/** A column that is told by its steps has to save so many bits by it. */
const STEPS_SAVE = 4;

const double = new DataView(new ArrayBuffer(8));

/**
 * Numbers, bit for bit: each as a unit and a count of it, or its eight bytes. A column of one unit that hardly changes, or runs evenly, is
 * told by the steps from one count to the next.
 */
export const numberColumn: Column<number> = (walk, context, count, given) => {
  const { coder } = walk;
  const counted = given === null ? null : chooseUnits(given);
  const wanted = counted !== null && goesInSteps(counted);
  const stepped = codeBits(coder, [ALL_STEPPED, inside(context, 'stepped')], 1, wanted ? 1 : 0) === 1;
  const unitContext = inside(context, 'unit');
  const found: number[] = [];
  let unitBefore = 0;
  let last = 0;
  let [before, beforeThat] = [0, 0];
  for (let i = 0; i < count && !coder.failed; i++) {
    const mine = counted?.[i] ?? { unit: 0, count: 0 };
    const unitContexts = [ALL_UNITS, unitContext, mix(unitContext, unitBefore)];
    const unit = codeBits(coder, unitContexts, UNIT_BITS, mine.unit);
    unitBefore = unit + 1;
    if (unit === NO_UNIT) {
      found.push(codeDouble(walk, context, given?.[i] ?? 0));
      continue;
    }
    const here = { context: mix(context, unit), unit, before, beforeThat };
    const now = stepped
      ? last + fromZigzag(codeAmount(walk, ALL_STEPS, here, zigzag(mine.count - last)))
      : codeSigned(walk, here, mine.count);
    const made = numberUnits[unit]?.of(now);
    if (made === undefined) coder.fail();
    else found.push(made);
    [before, beforeThat] = [stepped ? zigzag(now - last) + 1 : zigzag(now) + 1, before];
    last = now;
  }
  return found;
};

type Here = {
  readonly context: number;
  readonly unit: number;
  readonly before: number;
  readonly beforeThat: number;
};

function codeSigned(walk: Walk, here: Here, given: number): number {
  const own = inside(here.context, 'sign');
  const signed = codeBits(walk.coder, [ALL_SIGNS, own, mix(own, here.before)], 1, given < 0 ? 1 : 0) === 1;
  const amount = codeAmount(walk, ALL_COUNTS, here, Math.abs(given));
  return signed ? 0 - amount : amount; // no negative zero
}

function codeAmount({ coder }: Walk, all: number, here: Here, given: number): number {
  const own = inside(here.context, 'amount');
  const after = mix(own, here.before);
  return codeCount(coder, [mix(all, here.unit), own, after, mix(after, here.beforeThat)], given);
}

/** The first two bytes, sign and size, are expected in their column; the others look like chance. */
function codeDouble({ coder }: Walk, context: number, given: number): number {
  const bytes = new Uint8Array(8);
  double.setFloat64(0, given);
  for (let k = 0; k < bytes.length; k++) {
    bytes[k] = codeBits(coder, k < 2 ? [mix(inside(context, 'double'), k)] : [], 8, double.getUint8(k));
  }
  return new DataView(bytes.buffer).getFloat64(0);
}

function goesInSteps(counted: readonly Counted[]): boolean {
  const [first] = counted;
  if (first === undefined || first.unit === NO_UNIT) return false;
  if (counted.some(({ unit }) => unit !== first.unit)) return false;
  const bits = (amounts: readonly number[]) => amounts.reduce((sum, n) => sum + Math.log2(n + 1), 0);
  const steps = counted.map(({ count }, i) => zigzag(count - (counted[i - 1]?.count ?? 0)));
  return bits(steps) + STEPS_SAVE < bits(counted.map(({ count }) => Math.abs(count)));
}

/** −1, 1, −2, 2 … as 1, 2, 3, 4 … */
function zigzag(count: number): number {
  return count < 0 ? -2 * count - 1 : 2 * count;
}

function fromZigzag(count: number): number {
  return count % 2 === 1 ? -(count + 1) / 2 : count / 2;
}
