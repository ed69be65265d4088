import { locate, pointToPolyline } from '@footmark/geometry';
import {
  type DerivedFeature,
  type DerivedPath,
  type FeatureOf,
  type PathProfile,
  type PipeMaterial,
  profileAt,
} from '@footmark/site';
import type { WaterUnknown } from './drainFinding';

/** How water lies to a sewer in height, where they are near each other in plan. */
export type WaterAbove = {
  /** From the sewer's top up to the water's top (m), the least; null where it is not known all along. */
  readonly top: number | null;
  /** From the water's top up to the sewer's bottom (m), the least. */
  readonly bottom: number | null;
  /** Of the former. */
  readonly sigma: number;
  readonly missing: readonly WaterUnknown[];
  /** What the sewer is made of there. */
  readonly materials: readonly PipeMaterial[];
};

/** The pipe is looked at this often (m). */
const STEP_M = 0.1;

/**
 * Where the water pipe is nearer than `within` (m, outside to outside), and at the station `nearest`. Its depth is to its top, below the
 * ground over the sewer.
 */
export function waterAbove(
  profile: PathProfile,
  on: DerivedPath,
  { feature, outline }: DerivedFeature & { readonly feature: FeatureOf<'service'> },
  within: number,
  nearest: number,
): WaterAbove {
  const { depth, diameter = 0 } = feature.fields;
  const missing = new Set<WaterUnknown>();
  const materials = new Set<PipeMaterial>();
  if (depth === undefined) missing.add('service-depth');
  let [top, bottom, sigma] = [Infinity, Infinity, 0];
  for (const station of [...stationsOf(on, profile), nearest]) {
    const { size, cover, pipe, ground } = profileAt(profile, station);
    const outside = size.diameter / 2 + size.wall;
    const { point } = locate(on.line, station);
    if (pointToPolyline(point, outline).distance - outside - diameter / 2 > within && station !== nearest)
      continue;
    // under a building there is no ground to tell by, and the rule is about the sewer outside
    const isIndoors = profile.ground.indoors.some((i) => station >= i.from && station <= i.to);
    if (isIndoors) continue;
    materials.add(size.material);
    if (pipe === null) missing.add('pipe-level');
    // a depth of the pipe tells of both
    else if (ground === null) missing.add('ground');
    if (cover === null || depth === undefined) continue;
    if (cover.depth - depth < top) [top, sigma] = [cover.depth - depth, cover.sigma];
    bottom = Math.min(bottom, depth - cover.depth - 2 * outside);
  }
  if (missing.size === 0 && top === Infinity) missing.add('ground');
  const isKnown = missing.size === 0;
  return {
    top: isKnown ? top : null,
    bottom: isKnown ? bottom : null,
    sigma,
    missing: [...missing],
    materials: [...materials],
  };
}

/** Every few steps, and wherever the ground or the pipe changes its grade. */
function stationsOf(on: DerivedPath, { line, ground }: PathProfile): readonly number[] {
  const steps = Math.ceil(on.length / STEP_M);
  const even = Array.from({ length: steps + 1 }, (_, i) => (on.length * i) / steps);
  const turns = [...line.grades, ...ground.marks].map((p) => p.station);
  return [...even, ...turns.filter((s) => s >= 0 && s <= on.length)];
}
