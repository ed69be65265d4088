import type { Point } from '@footmark/geometry';
import type { RouteEnd, RouteRequest } from '../request';
import { type AreaSpans, costAhead } from './areaCost';
import { alongToEnd, before, mayArrive } from './arrival';
import type { Direction } from './direction';
import { acrossOf } from './lines';
import { type Place, pointAfter } from './place';
import type { Tables } from './tables';
import { SAME_LENGTH_M } from './tolerances';
import { acrossStep, type TurnStep } from './turns';

/** What legs from a place are made with. `free`: how far (m) one may go from here. */
export type LegSetting = {
  readonly request: RouteRequest;
  readonly steps: readonly TurnStep[];
  readonly tables: Tables;
  readonly free: number;
  readonly areas: AreaSpans;
  /** Whether to be there at a cost can be of use: what is not need not be reckoned to the end. */
  readonly isOfUse: (at: Point, cost: number) => boolean;
  /** Told of each leg, how far (m) it goes and what it costs in all; of a turn also where it leads. */
  readonly arrived: (from: Place, end: RouteEnd, along: number, cost: number) => void;
  readonly turned: (
    from: Place,
    step: TurnStep,
    along: number,
    cost: number,
    to: { readonly at: Point; readonly direction: Direction },
  ) => void;
};

/** Where the leg from a place may end: on an end of the request, or in a turn after which the next one runs on a track. */
export function legsFrom(place: Place, setting: LegSetting): void {
  arrivals(place, setting);
  const { request, steps, free } = setting;
  const straight = place.step === null ? 0 : request.leastStraight;
  const used = (place.step?.layingAfter ?? 0) + straight;
  for (const step of steps) {
    const least = used + step.layingBefore;
    if (least <= free && place.bends + step.bends.length <= request.mostBends)
      turns(place, step, least, setting);
  }
}

function arrivals(place: Place, { request, free, areas, arrived }: LegSetting): void {
  const { at, direction } = place;
  const used = place.step?.layingAfter ?? 0;
  for (const end of request.ends) {
    const t = mayArrive(end, direction.heading) ? alongToEnd(at, direction, end) : null;
    if (t === null || t < used - SAME_LENGTH_M || t > free + SAME_LENGTH_M) continue;
    arrived(place, end, t, place.cost + t + costAhead(areas, t));
  }
}

/** Legs that end in one kind of turn; the first of a route may also be as short as it can be. */
function turns(
  place: Place,
  step: TurnStep,
  least: number,
  { request, tables, free, areas, isOfUse, turned }: LegSetting,
): void {
  const { at, direction } = place;
  const after = tables.turned(direction, step.turn);
  const across = acrossStep(step, direction.heading);
  const between = step.between?.length ?? 0;
  const turnAfter = (t: number) => {
    const to = { at: pointAfter(place, t, across), direction: after };
    const plain = place.cost + t + between + step.cost;
    if (isOfUse(to.at, plain)) turned(place, step, t, plain + costAhead(areas, t), to);
  };
  if (place.step === null) turnAfter(least);
  for (const end of request.ends) {
    // anywhere on a piece, with a last leg that is as short as it can be
    if (!('from' in end.at) || !mayArrive(end, after.heading)) continue;
    const last = before(end, after, step.layingAfter);
    const shifted =
      'from' in last.at ? { from: minus(last.at.from, across), to: minus(last.at.to, across) } : last.at;
    const t = alongToEnd(at, direction, { ...end, at: shifted });
    if (t !== null && t >= least && t <= free) turnAfter(t);
  }
  const rate = direction.ahead.x * after.right.x + direction.ahead.y * after.right.y;
  if (Math.abs(rate) < 1e-6) return; // parallel: no length changes the track
  const beside = acrossOf(after, at) + acrossOf(after, across);
  const tracks = tables.tracks(after);
  const [low, high] = rate > 0 ? [least, free] : [free, least];
  for (let i = firstFrom(tracks, beside + low * rate); i < tracks.length; i++) {
    const track = tracks[i] ?? Infinity;
    if (track > beside + high * rate) break;
    turnAfter((track - beside) / rate);
  }
}

function minus(a: Point, b: Point): Point {
  return { x: a.x - b.x, y: a.y - b.y };
}

/** The index of the first of ordered numbers that is not less than one. */
function firstFrom(ordered: readonly number[], least: number): number {
  let [from, to] = [0, ordered.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if ((ordered[middle] ?? Infinity) < least) from = middle + 1;
    else to = middle;
  }
  return from;
}
