import { azimuthBetween, deflectionBetween, normalizeAzimuth } from './angle';
import { intersectCircles } from './circles';
import { locate } from './locate';
import { type PathElement, type PathLine, pathLength } from './pathLine';
import { cross, distance, dot, type Point, subtract } from './point';
import { valueAt } from './sorted';
import { NEGLIGIBLE_LENGTH_M } from './tolerances';

/** A stretch of a path by its stations, metres. */
export type PathStretch = Readonly<{ from: number; to: number }>;

/** The stretches of the path that run inside a circle, in order, exact on straights and arcs. One that only touches it has none. */
export function pathInCircle(line: PathLine, centre: Point, radius: number): readonly PathStretch[] {
  const breaks = [0, pathLength(line)];
  for (const [i, element] of line.elements.entries()) {
    const start = valueAt(line.starts, i);
    for (const along of crossings(element, centre, radius)) breaks.push(start + along);
  }
  breaks.sort((a, b) => a - b);
  const stretches: PathStretch[] = [];
  let from = 0;
  for (const to of breaks) {
    if (to - from <= NEGLIGIBLE_LENGTH_M) continue;
    if (distance(locate(line, (from + to) / 2).point, centre) < radius) {
      const last = stretches.at(-1);
      if (last !== undefined && from - last.to <= NEGLIGIBLE_LENGTH_M)
        stretches[stretches.length - 1] = { from: last.from, to };
      else stretches.push({ from, to });
    }
    from = to;
  }
  return stretches;
}

/** How far along the element, within its length, it meets the circle (m). */
function crossings(element: PathElement, centre: Point, radius: number): readonly number[] {
  const found =
    element.kind === 'straight' ? onStraight(element, centre, radius) : onArc(element, centre, radius);
  return found.filter((along) => along > 0 && along < element.length);
}

function onStraight(
  { start, azimuth }: Extract<PathElement, { kind: 'straight' }>,
  centre: Point,
  radius: number,
): readonly number[] {
  const toward = { x: Math.sin(azimuth), y: Math.cos(azimuth) };
  const toCentre = subtract(centre, start);
  const aside = Math.abs(cross(toward, toCentre));
  if (aside >= radius) return [];
  const half = Math.sqrt((radius - aside) * (radius + aside));
  const foot = dot(toward, toCentre);
  return [foot - half, foot + half];
}

function onArc(arc: Extract<PathElement, { kind: 'arc' }>, centre: Point, radius: number): readonly number[] {
  const cuts = intersectCircles(arc.centre, arc.radius, centre, radius);
  if (!cuts.ok) return [];
  const begin = azimuthBetween(arc.centre, arc.start);
  return cuts.value.points.map((p) => {
    const turned = deflectionBetween(begin, azimuthBetween(arc.centre, p));
    return normalizeAzimuth(Math.sign(arc.deflection) * turned) * arc.radius;
  });
}
