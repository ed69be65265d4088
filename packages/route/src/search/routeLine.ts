import { type PathLine, pathLength, pathLine } from '@footmark/geometry';
import type { Route } from '../foundRoute';
import type { RouteRequest } from '../request';

/** The centre line of a route, arcs and all; null for one without length. */
export function routeLine(
  { bends: table }: Pick<RouteRequest, 'bends'>,
  { points, bends }: Route,
): PathLine | null {
  const radius = new Map(table.map((b) => [b.id, b.radius]));
  const line = pathLine(
    points.map((point, i) => ({ point, bendRadius: radius.get(bends[i - 1]?.bend ?? '') ?? 0 })),
  );
  return line.ok ? line.value : null;
}

/** Length (m) along the centre line. */
export function developedLength(request: Pick<RouteRequest, 'bends'>, route: Route): number {
  const line = routeLine(request, route);
  return line === null ? 0 : pathLength(line);
}
