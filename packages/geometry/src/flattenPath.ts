import { chordCount } from './arc';
import { locate } from './locate';
import { type PathLine, pathLength } from './pathLine';
import type { Point } from './point';
import { valueAt } from './sorted';

/**
 * The whole line as a polyline for drawing: arcs become chords whose corners lie on the arc and whose
 * greatest distance from it is at most `maxSagitta` metres. Throws a RangeError unless `maxSagitta` is above
 * 0.
 */
export function flattenPath(line: PathLine, maxSagitta: number): readonly Point[] {
  return slicePath(line, 0, pathLength(line), maxSagitta);
}

/**
 * The line between two stations, both included, flattened like `flattenPath`; against the flow when
 * `toStation` is the smaller. Stations off the line are taken as its nearest end; an empty stretch gives its
 * one point.
 */
export function slicePath(
  line: PathLine,
  fromStation: number,
  toStation: number,
  maxSagitta: number,
): readonly Point[] {
  if (fromStation > toStation) return slicePath(line, toStation, fromStation, maxSagitta).toReversed();
  return chordStations(line, fromStation, toStation, maxSagitta).map(
    (station) => locate(line, station).point,
  );
}

/**
 * The stations, ascending, of the corners that `slicePath` gives between two stations, the first not above the second. Throws a
 * RangeError unless `maxSagitta` is above 0.
 */
export function chordStations(
  line: PathLine,
  fromStation: number,
  toStation: number,
  maxSagitta: number,
): readonly number[] {
  if (!(maxSagitta > 0)) throw new RangeError(`maxSagitta ${maxSagitta}`);
  const first = locate(line, fromStation);
  const last = locate(line, toStation);
  const from = Math.max(0, fromStation);
  const to = Math.min(pathLength(line), toStation);
  const stations = [Math.min(from, pathLength(line))];
  for (let i = first.element; i <= last.element; i += 1) {
    const begin = Math.max(from, valueAt(line.starts, i));
    const end = Math.min(to, valueAt(line.starts, i + 1));
    if (!(end > begin)) continue;
    const element = line.elements[i];
    const chords = element?.kind === 'arc' ? chordCount(element.radius, end - begin, maxSagitta) : 1;
    for (let k = 1; k < chords; k += 1) stations.push(begin + ((end - begin) * k) / chords);
    stations.push(end);
  }
  return stations;
}
