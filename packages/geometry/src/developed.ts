import { lastAtOrBelow, valueAt } from './sorted';
import { NEGLIGIBLE_LENGTH_M } from './tolerances';

/**
 * From `from` (plan station, metres) on, the pipe rises or falls by `slope` (rise over run); the sign does
 * not matter.
 */
export type SlopeStretch = Readonly<{ from: number; slope: number }>;

/** A vertical pipe of `height` metres (0 or more) at a plan station. */
export type VerticalDrop = Readonly<{ station: number; height: number }>;

/**
 * Plan station against developed (cable) length along a path, as breakpoints: at `plan[i]` the developed
 * length is `before[i]`, and `after[i]` once the drop there is passed. The first is station 0, the last the
 * end; all ascending, metres.
 */
export type DevelopedProfile = Readonly<{
  planLength: number;
  /** Developed length of the whole path, drops at both ends included. */
  total: number;
  plan: Float64Array;
  before: Float64Array;
  after: Float64Array;
  /** Indices of drops that lie off the path and are left out. */
  ignoredDrops: readonly number[];
}>;

/**
 * Developed length = plan·√(1 + g²) + drops. Stretches and drops may come in any order; before the first
 * stretch the slope is 0, stretches that begin past the end have no effect, and of two at one station the
 * later in the list holds. Throws a RangeError on a negative or non-finite length or height.
 */
export function developedProfile(
  planLength: number,
  stretches: readonly SlopeStretch[],
  drops: readonly VerticalDrop[],
): DevelopedProfile {
  if (!(planLength >= 0 && planLength < Infinity)) throw new RangeError(`planLength ${planLength}`);
  for (const { from, slope } of stretches) {
    if (!Number.isFinite(from) || !Number.isFinite(slope)) throw new RangeError(`stretch ${from}, ${slope}`);
  }
  for (const { station, height } of drops) {
    if (!Number.isFinite(station) || !(height >= 0 && height < Infinity)) {
      throw new RangeError(`drop ${station}, ${height}`);
    }
  }

  const onPath = (station: number) => station >= 0 && station <= planLength;
  const heights = new Map<number, number>();
  const ignoredDrops: number[] = [];
  drops.forEach(({ station, height }, i) => {
    if (onPath(station)) heights.set(station, (heights.get(station) ?? 0) + height);
    else ignoredDrops.push(i);
  });

  const ordered = stretches.toSorted((a, b) => a.from - b.from);
  const breaks = new Set([0, planLength, ...heights.keys(), ...ordered.map((s) => s.from).filter(onPath)]);
  const plan = Float64Array.from(breaks).sort();
  const before = new Float64Array(plan.length);
  const after = new Float64Array(plan.length);
  let developed = 0;
  let previous = 0;
  plan.forEach((station, i) => {
    const slope = ordered.findLast((s) => s.from <= previous)?.slope ?? 0;
    developed += (station - previous) * Math.hypot(1, slope);
    before[i] = developed;
    developed += heights.get(station) ?? 0;
    after[i] = developed;
    previous = station;
  });
  return { planLength, total: developed, plan, before, after, ignoredDrops };
}

/**
 * Developed length from the path's start to a plan station, metres. At a drop, `side` says whether the drop
 * itself is still to come (`before`, the default) or passed (`after`). Stations off the path are taken as its
 * nearest end.
 */
export function developedAt(
  profile: DevelopedProfile,
  station: number,
  side: 'before' | 'after' = 'before',
): number {
  const { plan, before, after } = profile;
  const at = Math.min(profile.planLength, Math.max(0, station));
  const i = lastAtOrBelow(plan, plan.length, at);
  const left = valueAt(plan, i);
  if (at === left) return valueAt(side === 'before' ? before : after, i);
  const share = (at - left) / (valueAt(plan, i + 1) - left);
  return valueAt(after, i) + share * (valueAt(before, i + 1) - valueAt(after, i));
}

/**
 * The plan station at a developed length from the path's start. `inDrop` when it lies within a vertical drop,
 * ends excluded. Off the path the nearest end is given and `beyond` says by how many metres of cable:
 * negative before the start, positive past the end, else 0.
 */
export function stationAtDeveloped(
  profile: DevelopedProfile,
  developed: number,
): Readonly<{ station: number; inDrop: boolean; beyond: number }> {
  const { plan, before, after, total } = profile;
  if (developed < 0) return { station: 0, inDrop: false, beyond: developed };
  if (developed > total) return { station: profile.planLength, inDrop: false, beyond: developed - total };
  const i = lastAtOrBelow(before, before.length, developed);
  const left = valueAt(plan, i);
  const passed = valueAt(after, i);
  if (developed <= passed) {
    const inDrop =
      developed > valueAt(before, i) + NEGLIGIBLE_LENGTH_M && developed < passed - NEGLIGIBLE_LENGTH_M;
    return { station: left, inDrop, beyond: 0 };
  }
  if (i + 1 >= plan.length) return { station: profile.planLength, inDrop: false, beyond: 0 };
  const share = (developed - passed) / (valueAt(before, i + 1) - passed);
  return { station: left + share * (valueAt(plan, i + 1) - left), inDrop: false, beyond: 0 };
}
