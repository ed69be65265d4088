import { seededRandom } from './seeded';

/** Draws numbers, items and ids that no other dice draw: `who` is in each. */
export type Dice = {
  /** Uniform in [0, 1). */
  readonly next: () => number;
  readonly pick: <Item>(from: readonly Item[]) => Item;
  readonly id: (prefix: string) => string;
};

export function dice(seed: number, who: string): Dice {
  const next = seededRandom(seed);
  let count = 0;
  return {
    next,
    pick: (from) => {
      if (from.length === 0) throw new RangeError('nothing to pick from');
      // a share below 1 of the length is an index
      return from[Math.floor(next() * from.length)] as (typeof from)[number];
    },
    id: (prefix) => {
      count += 1;
      return `${prefix}${who}${count}`;
    },
  };
}
