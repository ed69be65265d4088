import type { GradientRow } from '@footmark/adjust';
import { distance, type Point } from '@footmark/geometry';
import type { DerivedPath } from '../derive/derivePaths';
import { legOf, type Stray } from './stray';

/**
 * A place made of unknowns: nodes (at 2n and 2n + 1) by weights that sum to 1, and strays, each by how much of it goes in which direction.
 */
export type Mix = {
  readonly nodes: readonly { readonly node: number; readonly weight: number }[];
  readonly strays: readonly { readonly unknown: number; readonly by: Point }[];
};

/**
 * A pipe as a chain of straight links between its points and the places where it was located. `places` count legs: 2.5 is the middle of the
 * third; `drawn` is where the drawing has them.
 */
export type Chain = {
  readonly path: string;
  readonly places: readonly number[];
  readonly mixes: readonly Mix[];
  readonly drawn: readonly Point[];
};

export function chainOf(
  on: DerivedPath,
  strays: readonly Stray[],
  nodeOf: (path: string, vertex: number) => number,
): Chain {
  const path = on.path.id;
  const corner = (i: number) => ({
    place: i,
    mix: { nodes: [{ node: nodeOf(path, i), weight: 1 }], strays: [] } as Mix,
    drawn: on.points[i] ?? { x: 0, y: 0 },
  });
  const links = on.points.flatMap((from, i) => {
    const to = on.points[i + 1];
    if (to === undefined) return [corner(i)];
    const right = legOf(on, i)?.right ?? { x: 0, y: 0 };
    return [
      corner(i),
      ...strays
        .filter((s) => s.path === path && s.leg === i)
        .map(({ share, unknown }) => ({
          place: i + share,
          mix: {
            nodes: [
              { node: nodeOf(path, i), weight: 1 - share },
              { node: nodeOf(path, i + 1), weight: share },
            ],
            strays: [{ unknown, by: right }],
          },
          drawn: { x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) },
        })),
    ];
  });
  return {
    path,
    places: links.map((l) => l.place),
    mixes: links.map((l) => l.mix),
    drawn: links.map((l) => l.drawn),
  };
}

/** The link, counted from 0, on which a place lies; the later one at a point between two. */
export function linkAt({ places }: Chain, place: number): number {
  const last = places.length - 2;
  for (let i = 0; i < last; i++) if (place < (places[i + 1] ?? 0)) return i;
  return Math.max(0, last);
}

/** The mix and the drawn point at a place on a chain. */
export function chainAt(chain: Chain, place: number): { readonly mix: Mix; readonly drawn: Point } {
  const exact = chain.places.indexOf(place);
  const found = chain.mixes[exact];
  if (found !== undefined) return { mix: found, drawn: chain.drawn[exact] ?? { x: 0, y: 0 } };
  const link = linkAt(chain, place);
  const [low, high] = [chain.places[link] ?? 0, chain.places[link + 1] ?? 1];
  const t = (place - low) / (high - low);
  const [a, b] = [chain.mixes[link], chain.mixes[link + 1]];
  const [p, q] = [chain.drawn[link] ?? { x: 0, y: 0 }, chain.drawn[link + 1] ?? { x: 0, y: 0 }];
  const scaled = (mix: Mix | undefined, by: number): Mix => ({
    nodes: mix?.nodes.map(({ node, weight }) => ({ node, weight: weight * by })) ?? [],
    strays: mix?.strays.map((s) => ({ unknown: s.unknown, by: { x: s.by.x * by, y: s.by.y * by } })) ?? [],
  });
  const [first, second] = [scaled(a, 1 - t), scaled(b, t)];
  return {
    mix: { nodes: [...first.nodes, ...second.nodes], strays: [...first.strays, ...second.strays] },
    drawn: { x: p.x + t * (q.x - p.x), y: p.y + t * (q.y - p.y) },
  };
}

export function mixAt(mix: Mix, x: Float64Array): Point {
  let [px, py] = [0, 0];
  for (const { node, weight } of mix.nodes) {
    px += weight * (x[2 * node] ?? 0);
    py += weight * (x[2 * node + 1] ?? 0);
  }
  for (const { unknown, by } of mix.strays) {
    px += by.x * (x[unknown] ?? 0);
    py += by.y * (x[unknown] ?? 0);
  }
  return { x: px, y: py };
}

/** Adds `factor` times the derivatives of the component of a mix in the direction `axis`. */
export function addMix(mix: Mix, axis: Point, factor: number, out: GradientRow): void {
  for (const { node, weight } of mix.nodes) {
    out.add(2 * node, factor * weight * axis.x);
    out.add(2 * node + 1, factor * weight * axis.y);
  }
  for (const { unknown, by } of mix.strays) out.add(unknown, factor * (by.x * axis.x + by.y * axis.y));
}

/** Unit vector and length of a link from one mix to another, the vector nothing for a link of no length. */
export function linkBetween(
  from: Mix,
  to: Mix,
  x: Float64Array,
): { readonly u: Point; readonly length: number } {
  const [a, b] = [mixAt(from, x), mixAt(to, x)];
  const length = distance(a, b);
  return { u: length > 0 ? { x: (b.x - a.x) / length, y: (b.y - a.y) / length } : { x: 0, y: 0 }, length };
}
