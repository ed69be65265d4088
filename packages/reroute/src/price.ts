import { boredLength } from './boredLength';
import type { Way } from './ways';

/** What is charged, in one currency: by metre, piece, m³ and m². What is not given is left out. */
export type PriceList = {
  /** For each metre of new pipe, laid; for each metre that is bored, burst or lined, with its pipe. */
  readonly pipe?: number | undefined;
  readonly bored?: number | undefined;
  readonly bend?: number | undefined;
  readonly cleanout?: number | undefined;
  /** For each m³ of ground dug out and put back. */
  readonly dug?: number | undefined;
  /** For each m² of surface to restore. */
  readonly paved?: number | undefined;
  readonly lawn?: number | undefined;
};

export const priceItems = [
  'pipe',
  'bored',
  'bend',
  'cleanout',
  'dug',
  'paved',
  'lawn',
] as const satisfies readonly (keyof PriceList)[];
export type PriceItem = (typeof priceItems)[number];

/** What a way costs: the sum of all that has a price, and what it takes besides that has none. */
export type Price = { readonly total: number; readonly without: readonly PriceItem[] };

/** As much of a thing (m, m², m³) is none of it: rounding. */
const NONE = 0.005;

/**
 * What a way costs by a list; null without any price, or where an amount that has one is not known. An amount that is not known and has no
 * price is `without`, too.
 */
export function priceOf({ is, facts, bored }: Way, prices: PriceList): Price | null {
  if (priceItems.every((item) => prices[item] === undefined)) return null;
  const trenchless = boredLength(bored);
  const { volume, paved, lawn, beyond } = facts.dug;
  const amounts: Record<PriceItem, number | null> = {
    pipe: facts.length - trenchless,
    bored: trenchless,
    bend: is === 'in-place' ? 0 : facts.bends.reduce((all, b) => all + b.count, 0),
    cleanout: facts.cleanouts.missing.length,
    dug: volume,
    paved,
    lawn: lawn === null || beyond === null ? null : lawn + beyond,
  };
  const without: PriceItem[] = [];
  let total = 0;
  for (const item of priceItems) {
    const [price, amount] = [prices[item], amounts[item]];
    if (price === undefined) {
      if (amount === null || amount > NONE) without.push(item);
    } else if (amount === null) return null;
    else total += price * amount;
  }
  return { total, without };
}
