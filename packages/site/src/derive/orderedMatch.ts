/** Item `i` of one row could be item `j` of another; the more sure, the higher the `gain`. */
export type Candidate = { readonly i: number; readonly j: number; readonly gain: number };

/**
 * The candidates with the greatest total gain of all choices that use each item once and keep the order: of two that are chosen, the
 * one further along the first row is further along the second. Only candidates with a gain above 0 are chosen. In the order of the rows.
 */
export function orderedMatch<Item extends Candidate>(candidates: readonly Item[]): readonly Item[] {
  const inOrder = candidates.filter((c) => c.gain > 0).toSorted((p, q) => p.i - q.i || p.j - q.j);
  const best = new PrefixBest<Item>(Math.max(0, ...inOrder.map((c) => c.j + 1)));
  let end: Chain<Item> | null = null;
  let waiting: Chain<Item>[] = [];
  for (const item of inOrder) {
    // what ends with one item of the first row counts for later ones only: it is used once
    if (waiting[0] !== undefined && waiting[0].item.i < item.i) {
      for (const chain of waiting) best.add(chain);
      waiting = [];
    }
    const before: Chain<Item> | null = best.below(item.j);
    const chain = { item, before, total: item.gain + (before?.total ?? 0) };
    waiting.push(chain);
    if (end === null || chain.total > end.total) end = chain;
  }
  const chosen: Item[] = [];
  for (let chain = end; chain !== null; chain = chain.before) chosen.push(chain.item);
  return chosen.reverse();
}

type Chain<Item> = { readonly item: Item; readonly before: Chain<Item> | null; readonly total: number };

/** The best chain among those that end before a place of the second row, in logarithmic time (a Fenwick tree of maxima). */
class PrefixBest<Item extends Candidate> {
  private readonly tree: (Chain<Item> | null)[];

  constructor(size: number) {
    this.tree = new Array<Chain<Item> | null>(size + 1).fill(null);
  }

  add(chain: Chain<Item>): void {
    for (let i = chain.item.j + 1; i < this.tree.length; i += i & -i) {
      const known = this.tree[i] ?? null;
      if (known === null || chain.total > known.total) this.tree[i] = chain;
    }
  }

  below(j: number): Chain<Item> | null {
    let best: Chain<Item> | null = null;
    for (let i = j; i > 0; i -= i & -i) {
      const known = this.tree[i] ?? null;
      if (known !== null && (best === null || known.total > best.total)) best = known;
    }
    return best;
  }
}
