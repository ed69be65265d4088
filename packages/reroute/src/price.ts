import type { Way } from './ways';

/** What is charged, in one currency: by metre, piece, m³ and m². What is not given costs nothing. */
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

/** What a way costs by a list; null without any price, or where an amount that has one is not known. */
export function priceOf({ is, facts, bored }: Way, prices: PriceList): number | null {
  if (priceItems.every((item) => prices[item] === undefined)) return null;
  const without = bored.reduce((sum, { from, to }) => sum + to - from, 0);
  const amounts: Record<PriceItem, number | null> = {
    pipe: facts.length - without,
    bored: without,
    bend: is === 'in-place' ? 0 : facts.bends.reduce((all, b) => all + b.count, 0),
    cleanout: facts.cleanouts.missing,
    dug: facts.dug.volume,
    paved: facts.dug.paved,
    lawn: facts.dug.lawn + facts.dug.beyond,
  };
  let sum = 0;
  for (const item of priceItems) {
    const [price, amount] = [prices[item], amounts[item]];
    if (price === undefined) continue;
    if (amount === null) return null;
    sum += price * amount;
  }
  return sum;
}
