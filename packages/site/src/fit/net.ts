import type { Point } from '@footmark/geometry';
import type { Derived } from '../derive/derive';
import { refKey } from '../document/pointOwners';
import { factorOf, type Run } from '../document/run';
import type { Site } from '../document/site';
import { type Chain, chainOf } from './chain';
import { nodeOfRef } from './nodeOfRef';
import { pathsOnWays } from './pathsOnWays';
import type { Located, Looked } from './placed';
import type { PlacedMark } from './placedMark';
import { piecesToNode } from './pointOnWay';
import { type Stray, strayNodes } from './stray';
import { type Way, wayOf } from './way';
import { cableOver } from './wayPlace';

/** A run in the net: its way, and where among the unknowns its scale, its zero and its entry leg are. */
export type NetRun = {
  readonly run: Run;
  readonly way: Way;
  readonly scale: number;
  readonly zero: number;
  /** Null without a riser: nothing is between the zero and the pipe. */
  readonly entryLeg: number | null;
  /** Of a run that was zeroed at a point of its way: the pieces that lead there, and the cable (m) from their end to it as drawn. */
  readonly origin: { readonly pieces: number; readonly further: number } | null;
};

/**
 * The unknowns of a site's pipes and runs, as drawn and said: node n at 2n and 2n + 1, then how far the pipe strays where it was
 * located, then the runs, then the counts of the readings that evidence hangs on.
 */
export type Net = {
  readonly site: Site;
  readonly derived: Derived;
  /** By node: the key of its point and where it was drawn. */
  readonly nodes: readonly { readonly key: string; readonly at: Point }[];
  readonly nodeAt: ReadonlyMap<string, number>;
  readonly paths: readonly string[];
  readonly chains: ReadonlyMap<string, Chain>;
  readonly runs: ReadonlyMap<string, NetRun>;
  /** By reading: every mark with a place whose run is in the net. */
  readonly marks: ReadonlyMap<string, PlacedMark>;
  /** By reading: where its count is among the unknowns. */
  readonly counters: ReadonlyMap<string, number>;
  readonly strays: readonly Stray[];
  readonly looked: Looked;
  readonly start: Float64Array;
};

/**
 * `evidenced`: the readings that evidence hangs on; `located`: those whose sonde was located, and on which
 * leg; `looked`: on which leg those that are compared with others are.
 */
export function netOf(
  site: Site,
  derived: Derived,
  evidenced: ReadonlySet<string>,
  { located, looked }: { readonly located: Located; readonly looked: Looked },
): Net {
  const paths = pathsOnWays(derived);
  const nodes: { key: string; at: Point }[] = [];
  const nodeAt = new Map<string, number>();
  for (const id of paths) {
    const on = derived.paths.get(id);
    for (const v of on?.path.vertices ?? []) {
      const point = derived.points.get(refKey({ of: id, at: v.id }));
      if (point === undefined || nodeAt.has(point.is)) continue;
      nodeAt.set(point.is, nodes.length);
      nodes.push({ key: point.is, at: point.at });
    }
  }
  const start: number[] = nodes.flatMap(({ at }) => [at.x, at.y]);
  const nodeOf = (path: string, index: number): number => {
    const v = derived.paths.get(path)?.path.vertices[index];
    const point = v === undefined ? undefined : derived.points.get(refKey({ of: path, at: v.id }));
    return nodeAt.get(point?.is ?? '') ?? -1;
  };
  const unknown = (value: number) => start.push(value) - 1;
  const strays = strayNodes(derived, located, () => unknown(0));
  const chains = new Map(
    paths.flatMap((id) => {
      const on = derived.paths.get(id);
      return on === undefined ? [] : [[id, chainOf(on, strays, nodeOf)]];
    }),
  );
  const runs = new Map<string, NetRun>();
  for (const run of site.runs) {
    const route = derived.routes.get(run.id);
    const way = route === undefined ? [] : wayOf(route, derived.paths, chains);
    if (way.length === 0) continue;
    const first = derived.marks.find((m) => m.run.id === run.id)?.trace;
    runs.set(run.id, {
      run,
      way,
      scale: unknown(factorOf(run.scale)),
      zero: unknown(run.zero.counter),
      entryLeg: run.zero.at === 'rim' ? unknown(first?.entryLeg ?? 0) : null,
      origin: originOf({ run, way, derived, nodeAt, x: Float64Array.from(start) }),
    });
  }
  const marks = new Map<string, PlacedMark>();
  const counters = new Map<string, number>();
  for (const mark of derived.marks) {
    if (mark.place === null || !runs.has(mark.run.id)) continue;
    marks.set(mark.reading.id, { ...mark, place: mark.place });
    if (evidenced.has(mark.reading.id)) counters.set(mark.reading.id, unknown(mark.trace.counted));
  }
  return {
    site,
    derived,
    nodes,
    nodeAt,
    paths,
    chains,
    runs,
    marks,
    counters,
    strays,
    looked,
    start: Float64Array.from(start),
  };
}

/** `x`: the nodes and strays as drawn. */
function originOf({
  run,
  way,
  derived,
  nodeAt,
  x,
}: Pick<NetRun, 'run' | 'way'> & Pick<Net, 'derived' | 'nodeAt'> & { readonly x: Float64Array }) {
  if (run.zero.at !== 'point') return null;
  const node = nodeOfRef({ derived, nodeAt }, run.zero.point);
  const pieces = node === null ? null : piecesToNode(way, node);
  const start = derived.marks.find((m) => m.run.id === run.id)?.trace.start;
  return pieces === null || start === undefined
    ? null
    : { pieces, further: start - cableOver(way, x, pieces) };
}
