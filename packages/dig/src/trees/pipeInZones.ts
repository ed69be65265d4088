import { distance, locate, type PathStretch, pathInCircle, pathLength, stationOf } from '@footmark/geometry';
import {
  type Derived,
  type DerivedPath,
  type Path,
  pipeSizeAt,
  type Side,
  type Site,
  sideOf,
  type TreeRuleId,
} from '@footmark/site';
import { type BoreUnder, boreUnder, leastCover } from './boreUnder';
import type { TreeZones } from './treeZones';

/** What of a pipe runs in one of a tree's zones. */
export type PipeInZone = {
  readonly rule: TreeRuleId;
  readonly radius: number;
  /** Metres of pipe inside, and where by its stations. */
  readonly length: number;
  readonly stretches: readonly PathStretch[];
  /** Metres inside the zone of the roots that hold the tree up; null where the rule knows none. */
  readonly inner: number | null;
};

/** A pipe beside a tree, within reach of at least one zone. */
export type PipeByTree = {
  readonly tree: string;
  readonly path: string;
  readonly state: Path['state'];
  /** Of the pipe's place nearest to the trunk (m). */
  readonly station: number;
  /** Pipe wall to trunk face (m); negative where they overlap. */
  readonly distance: number;
  /** Of the pipe, seen with its flow, on which the tree stands. */
  readonly side: Side;
  /** By every rule, the chosen first. */
  readonly zones: readonly PipeInZone[];
  readonly bore: BoreUnder;
};

/** Null for a pipe that no zone of the tree reaches. */
export function pipeByTree(
  site: Site,
  { profiles }: Pick<Derived, 'profiles'>,
  on: DerivedPath,
  tree: TreeZones,
): PipeByTree | null {
  const near = stationOf(on.line, tree.at);
  const widest = Math.max(...tree.zones.map((z) => z.radius));
  if (near.distance >= widest) return null;
  const zones = tree.zones.map(({ rule, radius, inner }): PipeInZone => {
    const stretches = pathInCircle(on.line, tree.at, radius);
    return {
      rule,
      radius,
      stretches,
      length: lengthOf(stretches),
      inner: inner === null ? null : lengthOf(pathInCircle(on.line, tree.at, inner.radius)),
    };
  });
  const { diameter, wall } = pipeSizeAt(on.path.stretches, near.station);
  const apart = near.distance - diameter / 2 - wall - tree.diameter / 2;
  const stretches = zones[0]?.stretches ?? [];
  const [from, to] = [stretches[0]?.from ?? near.station, stretches.at(-1)?.to ?? near.station];
  return {
    tree: tree.tree,
    path: on.path.id,
    state: on.path.state,
    station: near.station,
    distance: apart,
    side: sideOfTree(on, tree, near.station),
    zones,
    bore: boreUnder(site, tree, apart, leastCover(profiles.get(on.path.id), from, to)),
  };
}

function lengthOf(stretches: readonly PathStretch[]): number {
  return stretches.reduce((sum, { from, to }) => sum + to - from, 0);
}

/** A place this far (m) along the pipe tells its direction: past a corner beside which the tree stands. */
const ALONG_M = 0.01;

/** Seen along the pipe from just before its nearest place to just after. */
function sideOfTree({ line }: DerivedPath, { at }: TreeZones, station: number): Side {
  const [from, to] = [Math.max(0, station - ALONG_M), Math.min(pathLength(line), station + ALONG_M)];
  const [a, b] = [locate(line, from).point, locate(line, to).point];
  return sideOf(at, a, distance(a, b) > 0 ? b : at);
}
