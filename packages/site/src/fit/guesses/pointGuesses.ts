import { azimuthBetween, distance, longChord, normalizeAzimuth, type Point } from '@footmark/geometry';
import { isPath, pointOwners, refKey } from '../../document/pointOwners';
import type { Ref, Spot } from '../../document/spot';
import { settings } from '../../rules/settings';
import { sigmaOf } from '../../rules/sigmaOf';
import type { Net } from '../net';
import { nodeOfRef } from '../nodeOfRef';
import { pointSigmas } from '../pointSigma';
import { strayPerMetre } from '../stray';
import { LEAST_SIGMA_M, type Tagged } from '../tagged';

/** How the points of the pipes were drawn or measured. */
export function* pointGuesses(net: Net): Generator<Tagged> {
  const { site, derived } = net;
  const sigmaOfPoint = pointSigmas(site, derived.points);
  const owners = new Map(pointOwners(site).map((o) => [o.id, o]));
  for (const [node, { key, at }] of net.nodes.entries()) {
    const [of = '', vertex = ''] = key.split('/');
    const owner = owners.get(of);
    const index = owner?.vertices.findIndex((v) => v.id === vertex) ?? -1;
    const spot = owner?.vertices[index]?.spot;
    if (owner === undefined || spot === undefined) continue;
    const about = { path: of, vertex };
    const tied = sigmaOf(site, 'tiedPipePoint');
    const place = (sigma: number) => coordinates(node, at, Math.max(sigma, LEAST_SIGMA_M), about);
    if (!isPath(owner)) {
      yield* place(Math.hypot(sigmaOfPoint({ of, at: vertex }), tied));
      continue;
    }
    const nodeBefore = (steps: number) => nodeOfVertex(net, of, owner.vertices[index - steps]?.id);
    switch (spot.by) {
      case 'finger':
        yield* place(sigmaOf(site, 'drawnPipePoint'));
        break;
      case 'course':
      case 'turn':
      case 'arc':
        yield* legGuess(net, about, node, spot, nodeBefore) ?? place(sigmaOf(site, 'drawnPipePoint'));
        break;
      case 'between':
        yield* betweenGuess(net, about, node, at, spot);
        break;
      default:
        yield* place(Math.hypot(sigmaOfPoint({ of, at: vertex }), tied));
    }
  }
}

function coordinates(
  node: number,
  at: Point,
  sigma: number,
  about: { path: string; vertex: string },
): readonly Tagged[] {
  return (['x', 'y'] as const).map((axis, i) => ({
    tag: { is: 'point', ...about, axis },
    observation: {
      kind: 'coordinate',
      id: `point/${about.path}/${about.vertex}`,
      unknown: 2 * node + i,
      value: at[axis],
      sigma,
    },
  }));
}

/** A leg told by length and direction from the point before; null when that is no node. */
function legGuess(
  { site, nodes }: Net,
  about: { path: string; vertex: string },
  node: number,
  spot: Extract<Spot, { by: 'course' | 'turn' | 'arc' }>,
  nodeBefore: (steps: number) => number | null,
): readonly Tagged[] | null {
  const before = nodeBefore(1);
  const earlier = nodeBefore(2);
  const [start, from, here] = [earlier, before, node].map((n) => nodes[n ?? -1]?.at);
  if (before === null || from === undefined || here === undefined) return null;
  if (spot.by === 'turn' && (earlier === null || start === undefined)) return null;
  const length = spot.by === 'arc' ? longChord(spot.radius, Math.abs(spot.sweep)) : spot.distance;
  const sigma = Math.hypot(site.tape.sigma, settings.tapeRelative.value * length);
  const direction = sigmaOf(site, 'pipeDirection');
  const id = `leg/${about.path}/${about.vertex}`;
  const [a, b] = [{ at: 2 * before }, { at: 2 * node }];
  return [
    {
      tag: { is: 'leg', ...about, part: 'length' },
      observation: { kind: 'distance', id, from: a, to: b, value: length, sigma },
    },
    {
      tag: { is: 'leg', ...about, part: spot.by === 'turn' ? 'turn' : 'direction' },
      observation:
        spot.by === 'turn' && earlier !== null && start !== undefined
          ? {
              kind: 'angle',
              id,
              station: a,
              backsight: { at: 2 * earlier },
              foresight: b,
              // of the drawn legs: what comes before may be an arc, which is left in another direction than its chord's
              value: normalizeAzimuth(azimuthBetween(from, here) - azimuthBetween(from, start)),
              sigma: direction,
            }
          : { kind: 'azimuth', id, from: a, to: b, value: azimuthBetween(from, here), sigma: direction },
    },
  ];
}

/** A point on the line between two others: across it as sure as a pipe is straight, along it as sure as one drawn by eye. */
function betweenGuess(
  net: Net,
  about: { path: string; vertex: string },
  node: number,
  at: Point,
  spot: Extract<Spot, { by: 'between' }>,
): readonly Tagged[] {
  const { site } = net;
  const ends = [spot.from, spot.to].map((ref) => ({ node: nodeOfRef(net, ref), at: placeOf(net, ref) }));
  const [a, b] = ends;
  const length = a?.at === undefined || b?.at === undefined ? 0 : distance(a.at, b.at);
  if (a?.at === undefined || b?.at === undefined || length === 0)
    return coordinates(node, at, sigmaOf(site, 'drawnPipePoint'), about);
  const f = spot.fraction;
  const within = Math.max(0, f * (1 - f)) * length;
  const across = Math.sqrt(strayPerMetre(sigmaOf(site, 'pipeStray')) * within);
  const u = { x: (b.at.x - a.at.x) / length, y: (b.at.y - a.at.y) / length };
  const axes = [
    { axis: 'along', unit: u, sigma: sigmaOf(site, 'drawnPipePoint') },
    { axis: 'across', unit: { x: u.y, y: -u.x }, sigma: Math.max(across, sigmaOf(site, 'tiedPipePoint')) },
  ] as const;
  const parts = [
    { node, weight: 1 },
    { node: a.node, at: a.at, weight: f - 1 },
    { node: b.node, at: b.at, weight: -f },
  ];
  return axes.map(({ axis, unit, sigma }) => ({
    tag: { is: 'point', ...about, axis },
    observation: {
      kind: 'custom',
      id: `point/${about.path}/${about.vertex}`,
      value: 0,
      sigma,
      evaluate: (x) =>
        parts.reduce((sum, p) => {
          const px = p.node === null ? (p.at?.x ?? 0) : (x[2 * p.node] ?? 0);
          const py = p.node === null ? (p.at?.y ?? 0) : (x[2 * p.node + 1] ?? 0);
          return sum + p.weight * (px * unit.x + py * unit.y);
        }, 0),
      gradient: (_, out) => {
        for (const p of parts) {
          if (p.node === null) continue;
          out.add(2 * p.node, p.weight * unit.x);
          out.add(2 * p.node + 1, p.weight * unit.y);
        }
      },
    },
  }));
}

function nodeOfVertex(net: Net, path: string, vertex: string | undefined): number | null {
  return vertex === undefined ? null : nodeOfRef(net, { of: path, at: vertex });
}

function placeOf({ derived }: Net, ref: Ref): Point | undefined {
  return derived.points.get(refKey(ref))?.at;
}
