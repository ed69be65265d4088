import { locate, type Point, stationOfVertex, tangentLength } from '@footmark/geometry';
import type { Site } from '../document/site';
import { SAME_TURN_RAD, type StandardBend, standardBendOf } from '../kinds/standardBends';
import { ruleValue } from '../rules/ruleOf';
import type { DerivedPath } from './derivePaths';
import { DRAWN_TURN_RAD, drawnTurn } from './drawnTurn';
import { setOutLetters } from './setOutLetters';

/** The bend that is laid at a point of a pipe. */
export type SetOutBend = {
  /** As it is drawn (rad), positive to the right looking with the flow. */
  readonly turn: number;
  /** By how much the fitting is known to turn the pipe (rad, to that side); null: nobody said. */
  readonly known: number | null;
  /** The standard bend that turns by what is known, else by about what is drawn. */
  readonly fitting: StandardBend | null;
  /** Centre-line radius (m), 0 for a corner; and from the corner back to where the bend begins (m). */
  readonly radius: number;
  readonly tangent: number;
};

/** A place that is painted to set a pipe out, by its number from the upstream end. */
export type SetOutPlace = {
  readonly path: string;
  readonly number: number;
  /** What is painted, `NL-3`: with its hyphen it reads like no mark of a run. */
  readonly label: string;
  /** `vertex`: a point of the pipe at which it goes straight on; `between`: put in where two others are far apart. */
  readonly is: 'start' | 'bend' | 'vertex' | 'between' | 'end';
  /** Plan metres from the start; of a bend to the middle of its arc. */
  readonly station: number;
  /** Of a bend where its two legs meet: outside of its arc. */
  readonly at: Point;
  readonly bend: SetOutBend | null;
  /** How far the pipe falls straight down here (m). */
  readonly drop: number;
};

/** Paint nearer to each other than this (m) runs together: no rule puts more of it. */
const CLOSEST_M = 0.3;

/** However long a pipe is, a list of more places than about this is no help to a crew. */
const MOST_BETWEEN = 1000;

/** Rounding puts no further point on a stretch that is as long as the rule allows (m). */
const ROUNDING_M = 1e-6;

/**
 * The places that a crew paints for a pipe, with its flow: its points, and between them as many as keep each gap along the pipe within the
 * rule `setOutSpacing` (0: none between).
 */
export function setOutPlaces(site: Site, on: DerivedPath): readonly SetOutPlace[] {
  const letters = setOutLetters(site).get(on.path.id) ?? '';
  const spacing = spacingOn(site, on);
  const places: Omit<SetOutPlace, 'path' | 'number' | 'label'>[] = [];
  for (const [i, at] of on.points.entries()) {
    const station = stationOfVertex(on.line, i);
    const before = places.at(-1)?.station ?? station;
    const pieces = Math.ceil((station - before - ROUNDING_M) / spacing);
    for (let k = 1; k < pieces; k++) {
      const between = before + (k / pieces) * (station - before);
      const { point } = locate(on.line, between);
      places.push({ is: 'between', station: between, at: point, bend: null, drop: 0 });
    }
    const bend = bendAt(on, i);
    const is = i === 0 ? 'start' : i === on.points.length - 1 ? 'end' : bend === null ? 'vertex' : 'bend';
    places.push({ is, station, at, bend, drop: on.path.vertices[i]?.drop ?? 0 });
  }
  return places.map((place, i) => ({
    path: on.path.id,
    number: i + 1,
    label: `${letters}-${i + 1}`,
    ...place,
  }));
}

function spacingOn(site: Site, { length }: DerivedPath): number {
  const asked = ruleValue(site, 'setOutSpacing');
  return asked === 0 ? Infinity : Math.max(asked, CLOSEST_M, length / MOST_BETWEEN);
}

/** The bend at a point; null where the pipe goes straight on, within what can be drawn, and no fitting is known. */
function bendAt({ path, points, line }: DerivedPath, i: number): SetOutBend | null {
  const turn = drawnTurn(points, i);
  const known = path.vertices[i]?.bend ?? null;
  if (turn === null || (known === null && Math.abs(turn) <= DRAWN_TURN_RAD)) return null;
  const radius = line.radii[i] ?? 0;
  return {
    turn,
    known,
    fitting: known === null ? standardBendOf(turn, DRAWN_TURN_RAD) : standardBendOf(known, SAME_TURN_RAD),
    radius,
    tangent: tangentLength(radius, turn),
  };
}
