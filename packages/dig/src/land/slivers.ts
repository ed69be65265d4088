import { settings } from '@footmark/site';
import type { LandStretch } from './land';
import { isSameLand, type Whose } from './whose';

/** Two lines that were drawn for one lie no further apart than a point that was put there by eye may be off (m). */
const SLIVER_M = settings.assumedPointSigma.value;

/** Whom one would ask first of two. */
const ASKED: readonly Whose[] = ['public', 'shared', 'neighbour', 'outside', 'private', 'unknown'];

/**
 * Stretches of one path, without those between two lines that were drawn for one, as a curb and a street: so short, and no thing says
 * whose they are. They go with the land beside them whose owner is to be asked.
 */
export function withoutSlivers(stretches: readonly LandStretch[]): readonly LandStretch[] {
  const found: LandStretch[] = [];
  for (const [i, one] of stretches.entries()) {
    const beside = [stretches[i - 1], stretches[i + 1]].filter((s) => s !== undefined);
    const [land = one] = isSliver(one)
      ? beside.toSorted((a, b) => ASKED.indexOf(a.whose) - ASKED.indexOf(b.whose))
      : [];
    const { whose, features } = land;
    const before = found.at(-1);
    if (before !== undefined && isSameLand(before, land)) found[found.length - 1] = { ...before, to: one.to };
    else found.push({ ...one, whose, features });
  }
  return found;
}

/** Nothing says that it is a neighbour's but where it lies. */
function isSliver({ whose, features, from, to }: LandStretch): boolean {
  return (whose === 'outside' || whose === 'neighbour') && features.length === 0 && to - from < SLIVER_M;
}
