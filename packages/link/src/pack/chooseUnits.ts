import { countIn, NO_UNIT, numberUnits, UNIT_BITS } from './numberUnits';

/** Bits that a number takes as it is, and that another unit in a column costs besides its name. */
const DOUBLE_BITS = 64;
const ANOTHER_BITS = 4;

/** A number as a count of a unit; `count` is 0 and means nothing without one. */
export type Counted = { readonly unit: number; readonly count: number };

/**
 * Each number of a column as a count that makes exactly it. Few units for the whole column are better than the shortest count for each:
 * one after the other the unit that saves most is taken, as long as one saves anything. Only a writer chooses, so this is free to change.
 */
export function chooseUnits(values: readonly number[]): readonly Counted[] {
  const counts = numberUnits.map((unit) => values.map((value) => countIn(unit, value)));
  const cost = (unit: number, i: number): number => {
    if (unit === NO_UNIT) return DOUBLE_BITS;
    const count = counts[unit]?.[i] ?? null;
    return count === null ? Number.POSITIVE_INFINITY : 1 + Math.log2(Math.abs(count) + 1);
  };
  const costs = [...numberUnits.keys(), NO_UNIT].map((unit) => ({
    unit,
    of: values.map((_, i) => cost(unit, i)),
  }));

  let least = values.map(() => DOUBLE_BITS);
  let chosen = values.map(() => NO_UNIT);
  for (let units = 1; ; units++) {
    let best: { unit: number; saved: number; of: readonly number[] } | null = null;
    for (const { unit, of } of costs) {
      const gained = least.reduce((sum, now, i) => sum + Math.max(0, now - (of[i] ?? now)), 0);
      const saved = gained - UNIT_BITS - (units === 1 ? 0 : ANOTHER_BITS + values.length / units);
      if (saved > (best?.saved ?? 0)) best = { unit, saved, of };
    }
    if (best === null) break;
    const { unit, of } = best;
    chosen = chosen.map((now, i) => ((of[i] ?? Number.POSITIVE_INFINITY) < (least[i] ?? 0) ? unit : now));
    least = least.map((now, i) => Math.min(now, of[i] ?? now));
  }
  return chosen.map((unit, i) => ({ unit, count: counts[unit]?.[i] ?? 0 }));
}
