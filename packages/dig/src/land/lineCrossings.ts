import { COINCIDENT_M, distance, intersectSegments, nearestOnSegment, type Point } from '@footmark/geometry';
import type { PathLegs } from '../clearances/pathLegs';

/** A place at which a path meets a line: its station (plan m). `along`: the path runs on the line from there or up to there. */
export type LineCrossing = { readonly station: number; readonly at: Point; readonly along: boolean };

/** Where a path meets a line, by station; places nearer to each other than `COINCIDENT_M` are one. */
export function lineCrossings(
  { points, stations }: PathLegs,
  line: readonly Point[],
): readonly LineCrossing[] {
  const found: LineCrossing[] = [];
  const box = boxOf(line);
  for (let i = 0; i + 1 < points.length; i++) {
    const [a, b] = [points[i], points[i + 1]];
    const [from, to] = [stations[i], stations[i + 1]];
    if (a === undefined || b === undefined || from === undefined || to === undefined) continue;
    if (!meetsBox(a, b, box)) continue;
    for (let j = 0; j + 1 < line.length; j++) {
      const [c, d] = [line[j], line[j + 1]];
      if (c === undefined || d === undefined || !meetsBox(a, b, boxOf([c, d]))) continue;
      const meet = intersectSegments(a, b, c, d, 'included');
      const places = meet.kind === 'none' ? [] : meet.kind === 'point' ? [meet.point] : [meet.from, meet.to];
      for (const at of places) {
        const station = from + nearestOnSegment(at, a, b).t * (to - from);
        found.push({ station, at, along: meet.kind === 'overlap' });
      }
    }
  }
  found.sort((s, t) => s.station - t.station);
  return found.filter((one, i) => {
    const before = found[i - 1];
    return (
      before === undefined || one.station - before.station > COINCIDENT_M || distance(one.at, before.at) > 1
    );
  });
}

type Box = { readonly minX: number; readonly minY: number; readonly maxX: number; readonly maxY: number };

function boxOf(points: readonly Point[]): Box {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of points) {
    [minX, maxX] = [Math.min(minX, x), Math.max(maxX, x)];
    [minY, maxY] = [Math.min(minY, y), Math.max(maxY, y)];
  }
  return { minX, minY, maxX, maxY };
}

function meetsBox(a: Point, b: Point, { minX, minY, maxX, maxY }: Box): boolean {
  return (
    Math.max(a.x, b.x) >= minX - COINCIDENT_M &&
    Math.min(a.x, b.x) <= maxX + COINCIDENT_M &&
    Math.max(a.y, b.y) >= minY - COINCIDENT_M &&
    Math.min(a.y, b.y) <= maxY + COINCIDENT_M
  );
}
