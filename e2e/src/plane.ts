import type { Measured, MeasuredThing } from './measuredYard';
import type { Place } from './Plan';

/*
 * The plane geometry that journeys hold the app against, by school formulas: x east, y north, azimuths in degrees clockwise from north.
 * Nothing of the app's own packages is used here.
 */

const FOOT_M = 0.3048; // exact, by the definition of the international foot

/** The places (m) of all points of a list, by the names that people call them. */
export function placesOf(things: readonly MeasuredThing[]): ReadonlyMap<string, Place> {
  const places = new Map<string, Place>();
  for (const thing of things) {
    const line: Place[] = [];
    for (const point of thing.points) line.push(placed(point, line, thing, places));
    const corners = thing.balanced ? balanced(thing, line) : line;
    for (const [i, at] of corners.entries()) places.set(pointName(thing, i), at);
  }
  return places;
}

/** `House corner A`, `Fence point B`, and for a thing of one point its name alone. */
export function pointName(thing: MeasuredThing, index: number): string {
  if (thing.points.length === 1) return thing.name;
  return `${thing.name} ${thing.shape === 'area' ? 'corner' : 'point'} ${'ABCDEFGH'.charAt(index)}`;
}

function placed(
  point: Measured,
  line: readonly Place[],
  thing: MeasuredThing,
  places: ReadonlyMap<string, Place>,
): Place {
  const known = (name: string): Place => {
    const at = places.get(name);
    if (at === undefined) throw new Error(`${thing.name} is measured from ${name}, which is not there yet`);
    return at;
  };
  switch (point.by) {
    case 'coordinates':
      return { x: point.east.feet * FOOT_M, y: point.north.feet * FOOT_M };
    case 'bearing':
      return step(known(point.from), point.direction.degrees, point.distance.feet * FOOT_M);
    case 'offset': {
      const [a, b] = [known(point.from), known(point.to)];
      const heading = azimuth(a, b);
      const out = point.side === 'Right' ? 90 : -90;
      const foot = step(a, heading, point.along.feet * FOOT_M);
      return step(foot, heading + out, point.out.feet * FOOT_M);
    }
    case 'between': {
      const [a, b] = [known(point.from), known(point.to)];
      const share = { '¼': 0.25, Middle: 0.5, '¾': 0.75 }[point.share];
      return { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share };
    }
    case 'at':
      return known(point.point);
    case 'tapes': {
      const tapes = point.tapes.map(({ from, length }) => ({
        at: known(from),
        metres: length.feet * FOOT_M,
      }));
      return fitted(crossing(tapes, point.side), tapes);
    }
    case 'leg': {
      const from = last(line);
      const heading =
        point.direction.as === 'turn'
          ? azimuth(last(line.slice(0, -1)), from) + point.direction.degrees
          : point.direction.degrees;
      return step(from, heading, point.length.feet * FOOT_M);
    }
    case 'arc': {
      // a curve that leaves along the leg before it: its chord turns off by half of the central angle and is 2R·sin(Δ/2) long
      const from = last(line);
      const heading = azimuth(last(line.slice(0, -1)), from);
      const turn = point.turn === 'Right' ? point.angle.degrees : -point.angle.degrees;
      const chord = 2 * point.radius.feet * FOOT_M * Math.sin(radians(point.angle.degrees) / 2);
      return step(from, heading + turn / 2, chord);
    }
  }
}

type Tape = { readonly at: Place; readonly metres: number };

/** Where the first two tapes meet, on the side of the line from the first to the second (law of cosines). */
function crossing([a, b]: readonly Tape[], side: 'Left' | 'Right'): Place {
  if (a === undefined || b === undefined) throw new Error('two tapes are needed');
  const apart = Math.hypot(b.at.x - a.at.x, b.at.y - a.at.y);
  const along = (a.metres ** 2 - b.metres ** 2 + apart ** 2) / (2 * apart);
  const square = a.metres ** 2 - along ** 2;
  if (square < 0) throw new Error('the tapes do not meet');
  const heading = azimuth(a.at, b.at);
  return step(step(a.at, heading, along), heading + (side === 'Right' ? 90 : -90), Math.sqrt(square));
}

/** More Gauss steps than a tape ever needs. */
const STEPS = 50;

/** The place whose squared differences from the tapes have the least sum (Gauss's iteration, normal equations of two unknowns). */
function fitted(start: Place, tapes: readonly Tape[]): Place {
  let { x, y } = start;
  for (let n = 0; tapes.length > 2 && n < STEPS; n++) {
    let [xx, xy, yy, xr, yr] = [0, 0, 0, 0, 0];
    for (const { at, metres } of tapes) {
      const computed = Math.hypot(x - at.x, y - at.y);
      const [ux, uy, misfit] = [(x - at.x) / computed, (y - at.y) / computed, metres - computed];
      [xx, xy, yy, xr, yr] = [xx + ux * ux, xy + ux * uy, yy + uy * uy, xr + ux * misfit, yr + uy * misfit];
    }
    const det = xx * yy - xy * xy;
    x += (xr * yy - yr * xy) / det;
    y += (yr * xx - xr * xy) / det;
  }
  return { x, y };
}

type Side = { readonly run: Place; readonly length: number };

/** How the sides of an outline come back to its first corner: metres. */
function closure(thing: MeasuredThing, line: readonly Place[]) {
  const { closing } = thing;
  if (closing === undefined) throw new Error(`${thing.name} has no closing course`);
  const sides: Side[] = line.slice(1).map((to, i) => {
    const from = line[i] as Place; // the corner before one that is there
    const point = thing.points[i + 1];
    const along = point?.by === 'arc' ? point.radius.feet * FOOT_M * radians(point.angle.degrees) : null;
    const run = { x: to.x - from.x, y: to.y - from.y };
    return { run, length: along ?? Math.hypot(run.x, run.y) };
  });
  const length = closing.length.feet * FOOT_M;
  sides.push({ run: step({ x: 0, y: 0 }, closing.direction.degrees, length), length });
  const sum = (of: (side: Side) => number) => sides.reduce((total, side) => total + of(side), 0);
  const miss = { x: sum((s) => s.run.x), y: sum((s) => s.run.y) };
  return { sides, miss, perimeter: sum((s) => s.length), misclosure: Math.hypot(miss.x, miss.y) };
}

/** How the outline of a thing whose first corner is by coordinates closes as it was measured. */
export function closureOf(thing: MeasuredThing) {
  const { balanced: _, ...asMeasured } = thing;
  return closure(thing, [...placesOf([asMeasured]).values()]);
}

/** The corners when the misclosure is shared out by length (Bowditch's rule; a curve counts its length along). */
function balanced(thing: MeasuredThing, line: readonly Place[]): readonly Place[] {
  const { sides, miss, perimeter } = closure(thing, line);
  let at = last(line.slice(0, 1));
  return line.map((_, i) => {
    const side = sides[i - 1];
    if (side === undefined) return at;
    const share = side.length / perimeter;
    at = { x: at.x + side.run.x - miss.x * share, y: at.y + side.run.y - miss.y * share };
    return at;
  });
}

function azimuth(a: Place, b: Place): number {
  return (Math.atan2(b.x - a.x, b.y - a.y) * 180) / Math.PI;
}

function step(from: Place, degrees: number, metres: number): Place {
  return { x: from.x + metres * Math.sin(radians(degrees)), y: from.y + metres * Math.cos(radians(degrees)) };
}

function radians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}

function last<T>(list: readonly T[]): T {
  const found = list.at(-1);
  if (found === undefined) throw new Error('a leg needs a point before it');
  return found;
}
