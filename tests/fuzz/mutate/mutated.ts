import { type Dice, dice } from '../../random/dice';
import type { FuzzReader, Mutator } from '../reader';
import { byteMutators, MOST_BYTES, upTo } from './bytes';
import { textMutators } from './texts';

/** At most so many mutations, one on top of the other; mostly one, so that something is accepted. */
const MOST_MUTATIONS = 8;

/** Tells the dice of one input from those of the next. */
const APART = 2_654_435_761;

/** The input of a number, the same for the same seed whatever came before it. */
export function mutatedInput(
  { name, mutators }: Pick<FuzzReader, 'name' | 'mutators'>,
  seeds: readonly Uint8Array[],
  seed: number,
  number: number,
): Uint8Array {
  const drawn: Dice = dice((seed + Math.imul(number + 1, APART)) >>> 0, name);
  let input = dicePick(seeds, drawn);
  for (let n = upTo(drawn, MOST_MUTATIONS); n > 0; n -= 1) {
    const kind = drawn.next();
    const from: readonly Mutator[] =
      kind < 0.55 && mutators.length > 0 ? mutators : kind < 0.82 ? textMutators : byteMutators;
    input = drawn.pick(from)(input, drawn, seeds);
    if (input.length > MOST_BYTES) return input.slice(0, MOST_BYTES);
  }
  return input;
}

/** Small seeds as often as large ones together: in the small ones a mutation hits something that matters. */
function dicePick(seeds: readonly Uint8Array[], drawn: Dice): Uint8Array {
  const small = seeds.filter((s) => s.length < 3000);
  return drawn.pick(small.length > 0 && drawn.next() < 0.6 ? small : seeds);
}
