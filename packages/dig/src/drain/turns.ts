import { azimuthBetween, deflectionBetween, locate, type Point, stationOfVertex } from '@footmark/geometry';
import type { DerivedPath } from '@footmark/site';

/** A change of a pipe's direction in plan at one of its points: by how much (rad, to either side), and the bend's radius (m), 0 for a corner. */
export type Turn = {
  readonly vertex: string;
  readonly station: number;
  readonly place: Point;
  readonly turn: number;
  readonly radius: number;
};

/** A fitting is drawn no truer than this (rad): a turn of 45 degrees may measure a little more. */
export const DRAWN_TURN_RAD = Math.PI / 180;

/** All turns of a path with its flow. What a fitting is known to turn by goes before what is drawn. */
export function turnsOf({ path, points, line }: DerivedPath): readonly Turn[] {
  return path.vertices.slice(1, -1).flatMap(({ id, bend }, i): Turn[] => {
    const [before, here, after] = [points[i], points[i + 1], points[i + 2]];
    if (before === undefined || here === undefined || after === undefined) return [];
    const drawn = Math.abs(deflectionBetween(azimuthBetween(before, here), azimuthBetween(here, after)));
    const turn = bend ?? drawn;
    const station = stationOfVertex(line, i + 1);
    const place = locate(line, station).point;
    return turn === 0 ? [] : [{ vertex: id, station, place, turn, radius: line.radii[i + 1] ?? 0 }];
  });
}
