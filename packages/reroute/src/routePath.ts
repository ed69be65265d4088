import { distance } from '@footmark/geometry';
import type { Route, RouteRequest } from '@footmark/route';
import {
  type Derived,
  leastFall,
  letters,
  type Path,
  type PathVertex,
  type Site,
  type Spot,
  settings,
} from '@footmark/site';
import type { RerouteAsk } from './ask';

/** An end that lies this near (m) to a point of the old pipe is that point. */
const SAME_PLACE_M = 0.02;

/**
 * A route as a proposed pipe: its ends at the old pipe's points where they are such, its bends as the fittings that they are, and its levels at both ends
 * as far as they are known.
 */
export function routePath(
  site: Site,
  derived: Derived,
  {
    ask,
    request,
    route,
    id,
    name,
  }: {
    readonly ask: RerouteAsk;
    readonly request: RouteRequest;
    readonly route: Route;
    readonly id: string;
    readonly name: string;
  },
): Path {
  const bends = new Map(request.bends.map((b) => [b.id, b]));
  const last = route.points.length - 1;
  const inverts = [request.start.invert, request.ends.find((e) => e.id === route.end)?.invert ?? null];
  const vertices = route.points.map((p, i): PathVertex => {
    const bend = bends.get(route.bends[i - 1]?.bend ?? '');
    const invert = i === 0 ? inverts[0] : i === last ? inverts[1] : null;
    return {
      id: letters(i).toLowerCase(),
      spot: spotOf(derived, ask.path, p, i === 0 || i === last),
      ...(bend === undefined ? {} : { bend: bend.turn, bendRadius: bend.radius }),
      ...(invert === null || invert === undefined ? {} : { level: { is: 'invert', level: invert } }),
    };
  });
  return {
    id,
    name,
    state: 'proposed',
    vertices,
    bendRadius: settings.bendRadius.value,
    stretches: [
      { from: 0, material: ask.material, diameter: ask.diameter, slope: leastFall(site, ask.diameter).value },
    ],
  };
}

function spotOf(derived: Derived, path: string, { x, y }: { x: number; y: number }, isEnd: boolean): Spot {
  const on = isEnd ? derived.paths.get(path) : undefined;
  const index = on?.points.findIndex((p) => distance(p, { x, y }) < SAME_PLACE_M) ?? -1;
  const vertex = on?.path.vertices[index];
  if (vertex === undefined) return { by: 'coordinates', x, y };
  // what the old pipe's point is drawn at stays when that pipe goes, and a pipe that is only planned does go
  if (vertex.spot.by === 'at') return vertex.spot;
  return on?.path.state === 'proposed'
    ? { by: 'coordinates', x, y }
    : { by: 'at', point: { of: path, at: vertex.id } };
}
