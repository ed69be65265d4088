import { distance, type Point, stationOf } from '@footmark/geometry';
import type { Route } from '@footmark/route';
import { type Derived, letters, type Path, type PathVertex, type Spot, settings } from '@footmark/site';
import type { RerouteAsk } from './ask';
import type { Rerouting } from './requestOf';
import { invertAt } from './siteRequest';

/** An end that lies this near (m) to a point of the old pipe is that point. */
const SAME_PLACE_M = 0.02;

/**
 * A route as a proposed pipe: its ends at the points of the pipes and things that it joins where they are such, its bends as the fittings that they are,
 * and its levels at both ends as far as they are known.
 */
export function routePath(
  derived: Derived,
  {
    ask,
    rerouting,
    route,
    id,
    name,
  }: {
    readonly ask: RerouteAsk;
    readonly rerouting: Rerouting;
    readonly route: Route;
    readonly id: string;
    readonly name: string;
  },
): Path {
  const { request, onto } = rerouting;
  const bends = new Map(request.bends.map((b) => [b.id, b]));
  const last = route.points.length - 1;
  const joined = onto.get(route.end) ?? null;
  const vertices = route.points.map((p, i): PathVertex => {
    const bend = bends.get(route.bends[i - 1]?.bend ?? '');
    const invert =
      i === 0 ? request.start.invert : i === last ? endInvert(derived, rerouting, route, ask) : null;
    return {
      id: letters(i).toLowerCase(),
      spot:
        i === 0 ? spotOn(derived, ask.path, p) : i === last ? lastSpot(derived, ask, joined, p) : placeOf(p),
      ...(bend === undefined ? {} : { bend: bend.turn, bendRadius: bend.radius }),
      ...(invert === null ? {} : { level: { is: 'invert', level: invert } }),
    };
  });
  return {
    id,
    name,
    state: 'proposed',
    vertices,
    bendRadius: settings.bendRadius.value,
    stretches: [{ from: 0, material: ask.material, diameter: ask.diameter, slope: request.grade.least }],
  };
}

/** A pipe that is joined anywhere tells its level at just that place. */
function endInvert(
  derived: Derived,
  { request, onto }: Rerouting,
  route: Route,
  { otherwise }: RerouteAsk,
): number | null {
  const end = request.ends.find((e) => e.id === route.end);
  const on = derived.paths.get(onto.get(route.end) ?? '');
  const at = route.points.at(-1);
  if (end === undefined || on === undefined || at === undefined || otherwise.endInvert !== undefined)
    return end?.invert ?? null;
  return 'from' in end.at ? invertAt(derived, on.path.id, stationOf(on.line, at).station) : end.invert;
}

function lastSpot(derived: Derived, { to }: RerouteAsk, joined: string | null, p: Point): Spot {
  const thing = to.is === 'thing' ? derived.features.get(to.feature)?.feature : undefined;
  const [stands] = thing?.vertices ?? [];
  if (thing !== undefined && stands !== undefined)
    return { by: 'at', point: { of: thing.id, at: stands.id } };
  return joined === null ? placeOf(p) : spotOn(derived, joined, p);
}

function spotOn(derived: Derived, path: string, p: Point): Spot {
  const on = derived.paths.get(path);
  const index = on?.points.findIndex((q) => distance(q, p) < SAME_PLACE_M) ?? -1;
  const vertex = on?.path.vertices[index];
  if (vertex === undefined) return placeOf(p);
  // what the old pipe's point is drawn at stays when that pipe goes, and a pipe that is only planned does go
  if (vertex.spot.by === 'at') return vertex.spot;
  return on?.path.state === 'proposed' ? placeOf(p) : { by: 'at', point: { of: path, at: vertex.id } };
}

function placeOf({ x, y }: Point): Spot {
  return { by: 'coordinates', x, y };
}
