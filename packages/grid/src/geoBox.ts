import type { EarthPoint } from '@footmark/site';

/** A box of latitudes and longitudes, degrees. `westDeg` above `eastDeg`: across the date line. */
export type GeoBox = {
  readonly westDeg: number;
  readonly southDeg: number;
  readonly eastDeg: number;
  readonly northDeg: number;
};

/** Whether a place lies in a box, its edges included. */
export function isInBox(box: GeoBox, { latitudeDeg, longitudeDeg }: EarthPoint): boolean {
  return (
    latitudeDeg >= box.southDeg &&
    latitudeDeg <= box.northDeg &&
    eastOf(box.westDeg, longitudeDeg) <= eastOf(box.westDeg, box.eastDeg)
  );
}

/** How far off the middle of a box a place is, 0 in the middle and 1 on the edge, in the direction in which that is most. */
export function offMiddle(box: GeoBox, { latitudeDeg, longitudeDeg }: EarthPoint): number {
  const width = eastOf(box.westDeg, box.eastDeg);
  const height = box.northDeg - box.southDeg;
  return Math.max(
    Math.abs((2 * eastOf(box.westDeg, longitudeDeg)) / width - 1),
    Math.abs((2 * (latitudeDeg - box.southDeg)) / height - 1),
  );
}

/** Degrees eastward from one meridian to another, in [0, 360). */
function eastOf(westDeg: number, eastDeg: number): number {
  return (((eastDeg - westDeg) % 360) + 360) % 360;
}
