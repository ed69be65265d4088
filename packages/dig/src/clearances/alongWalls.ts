import { distance, locate, type Point, pointInRing, segmentDistance, subtract } from '@footmark/geometry';
import { type Derived, type DerivedPath, ruleValue, type Site } from '@footmark/site';
import { type PathLegs, pathLegs } from './pathLegs';
import { stretchesNear } from './stretchesNear';

/** A piece of a path outside a building that runs along one of its walls, nearer than is asked. Metres, pipe wall to building. */
export type AlongWall = {
  readonly path: string;
  readonly feature: string;
  readonly from: number;
  readonly to: number;
  readonly distance: number;
  readonly at: Point;
};

/** A piece shorter than this (m) only passes a wall. */
const SHORTEST_M = 0.5;

/** Where paths run along the walls of buildings: at most at the rule's angle to them. */
export function alongWalls(site: Site, { paths, features }: Derived): readonly AlongWall[] {
  const within = ruleValue(site, 'bearingWall');
  const turn = ruleValue(site, 'bearingWallTurn');
  const found: AlongWall[] = [];
  for (const on of paths.values()) {
    const legs = pathLegs(on);
    for (const { feature, outline } of features.values()) {
      if (feature.kind !== 'building') continue;
      for (const [i, c] of outline.entries()) {
        const d = outline[i + 1] ?? outline[0] ?? c;
        found.push(...alongWall(on, legs, { id: feature.id, outline, c, d }, within, turn));
      }
    }
  }
  return found;
}

type Wall = { readonly id: string; readonly outline: readonly Point[]; readonly c: Point; readonly d: Point };

function alongWall(
  on: DerivedPath,
  { points, stations, radii }: PathLegs,
  { id, outline, c, d }: Wall,
  within: number,
  turn: number,
): readonly AlongWall[] {
  const pieces: AlongWall[] = [];
  for (const [i, radius] of radii.entries()) {
    const [a, b] = [points[i], points[i + 1]];
    if (a === undefined || b === undefined || angleBetween(a, b, c, d) > turn) continue;
    const leg = { points: [a, b], stations: stations.slice(i, i + 2), radii: [radius] };
    for (const { from, to } of stretchesNear(leg, 0, [c, d], within + radius)) {
      if (pointInRing(locate(on.line, (from + to) / 2).point, outline) !== 'outside') continue;
      const nearest = segmentDistance(locate(on.line, from).point, locate(on.line, to).point, c, d);
      const last = pieces.at(-1);
      const piece = {
        path: on.path.id,
        feature: id,
        from,
        to,
        distance: nearest.distance - radius,
        at: nearest.to,
      };
      const goesOn = last !== undefined && from - last.to < SHORTEST_M;
      if (!goesOn) pieces.push(piece);
      else
        pieces[pieces.length - 1] = {
          ...(piece.distance < last.distance ? piece : last),
          from: last.from,
          to,
        };
    }
  }
  return pieces.filter(({ from, to }) => to - from >= SHORTEST_M);
}

/** Between two legs, 0 to π/2. */
function angleBetween(a: Point, b: Point, c: Point, d: Point): number {
  const [u, v] = [subtract(b, a), subtract(d, c)];
  const lengths = distance(a, b) * distance(c, d);
  return lengths === 0 ? Math.PI / 2 : Math.acos(Math.min(1, Math.abs(u.x * v.x + u.y * v.y) / lengths));
}
