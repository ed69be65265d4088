import { locate, type Point, stationOfVertex } from '@footmark/geometry';
import { type DerivedPath, drawnTurn } from '@footmark/site';

/** A change of a pipe's direction in plan at one of its points: by how much (rad, to either side), and the bend's radius (m), 0 for a corner. */
export type Turn = {
  readonly vertex: string;
  readonly station: number;
  readonly place: Point;
  readonly turn: number;
  readonly radius: number;
};

/** All turns of a path with its flow. What a fitting is known to turn by goes before what is drawn. */
export function turnsOf({ path, points, line }: DerivedPath): readonly Turn[] {
  return path.vertices.slice(1, -1).flatMap(({ id, bend }, i): Turn[] => {
    const turn = bend ?? Math.abs(drawnTurn(points, i + 1) ?? 0);
    const station = stationOfVertex(line, i + 1);
    const place = locate(line, station).point;
    return turn === 0 ? [] : [{ vertex: id, station, place, turn, radius: line.radii[i + 1] ?? 0 }];
  });
}
