import { locate, type PathElement, stationOf } from '@footmark/geometry';
import type { Headings, RouteEnd } from '@footmark/route';
import type { Derived, DerivedPath } from '@footmark/site';
import { type RerouteAsk, stationsOf } from './ask';
import { offBend } from './offBend';
import { depthAt, invertAt } from './siteRequest';

/**
 * An end that a request allows, the pipe that it is on, null at a thing to which none leads, and how deep (m) its invert lies there, null where
 * that is not known.
 */
export type AllowedEnd = {
  readonly end: RouteEnd;
  readonly onto: string | null;
  readonly depth: number | null;
};

/** A wye lies level or rolled up: seen from above its branch comes in at up to 45 degrees to the flow. */
const WYE_RAD = Math.PI / 4;
/** A station this near (m) to the end of a pipe is its end. */
export const AT_END_M = 0.05;
/** A thing this near (m) to a pipe stands on it. */
const ON_PIPE_M = 0.05;
/** A pipe is offered in pieces of at most so many metres: each counts as high as its higher end. */
const PIECE_M = 5;

/** Where a new pipe may arrive; nothing where the ask leads nowhere. */
export function endsOf(derived: Derived, ask: RerouteAsk): readonly AllowedEnd[] {
  const ends = arrivals(derived, ask);
  const { anyHeading, endInvert } = ask.otherwise;
  return ends.map(({ end, ...rest }) => ({
    ...rest,
    end: {
      ...end,
      headings: anyHeading ? null : end.headings,
      invert: endInvert ?? end.invert,
    },
  }));
}

function arrivals(derived: Derived, ask: RerouteAsk): readonly AllowedEnd[] {
  const { to } = ask;
  switch (to.is) {
    case 'station': {
      const on = derived.paths.get(ask.path);
      return on === undefined ? [] : [onPipe(derived, on, stationsOf(ask, on.length).to)];
    }
    case 'thing':
      return atThing(derived, ask, to.feature);
    case 'pipe': {
      const on = derived.paths.get(to.path);
      const least = to.path === ask.path ? Math.max(to.past, ask.from) : to.past;
      return on === undefined ? [] : alongPipe(derived, on, least);
    }
  }
}

function onPipe(derived: Derived, on: DerivedPath, station: number): AllowedEnd {
  const { point, azimuth } = locate(on.line, offBend(on, station, 'before'));
  const { id } = on.path;
  const headings = [headingsAt(on, station, azimuth)];
  const end = { id: 'end', at: point, headings, invert: invertAt(derived, id, station) };
  return { onto: id, depth: depthAt(derived, id, station), end };
}

/** Of the pipe that stands there, else from any side. */
function atThing(derived: Derived, { path }: RerouteAsk, feature: string): readonly AllowedEnd[] {
  const thing = derived.features.get(feature);
  const [at] = thing?.points ?? [];
  if (thing === undefined || at === undefined) return [];
  for (const on of derived.paths.values()) {
    const { station, distance } = stationOf(on.line, at);
    if (on.path.state === 'existing' && distance <= ON_PIPE_M) return [onPipe(derived, on, station)];
  }
  const { fields } = thing.feature;
  const isLevelled = derived.profiles.get(path)?.heights === 'levels';
  const invert = isLevelled && 'invert' in fields ? (fields.invert ?? null) : null;
  const depth = 'depth' in fields ? (fields.depth ?? null) : null;
  return [{ onto: null, depth, end: { id: 'end', at, headings: null, invert } }];
}

/** On every straight piece of a pipe from a station on. */
function alongPipe(derived: Derived, on: DerivedPath, least: number): readonly AllowedEnd[] {
  const { id } = on.path;
  return on.line.elements.flatMap((element, i) => {
    const from = on.line.starts[i] ?? 0;
    return piecesOf(element, Math.max(0, least - from)).map((piece, n): AllowedEnd => {
      const inverts = piece.map((along) => invertAt(derived, id, from + along));
      const [start, end] = piece;
      const at = { from: locate(on.line, from + start).point, to: locate(on.line, from + end).point };
      const headings = [headingsAt(on, from, element.azimuth)];
      const depth = depthAt(derived, id, from + end);
      return { onto: id, depth, end: { id: `on-${i}-${n}`, at, headings, invert: highest(inverts) } };
    });
  });
}

function piecesOf(element: PathElement, from: number): readonly (readonly [number, number])[] {
  const length = element.length - from;
  if (element.kind !== 'straight' || length < AT_END_M) return [];
  const count = Math.ceil(length / PIECE_M);
  return Array.from({ length: count }, (_, n) => [
    from + (length * n) / count,
    from + (length * (n + 1)) / count,
  ]);
}

function highest(inverts: readonly (number | null)[]): number | null {
  return inverts.reduce<number | null>(
    (most, one) => (most === null || one === null ? null : Math.max(most, one)),
    inverts[0] ?? null,
  );
}

/** At the very end of a pipe a new fitting is turned as it must be, but for back where it came from; into a pipe that goes on, a wye. */
function headingsAt({ length }: DerivedPath, station: number, flow: number): Headings {
  const wide = length - station < AT_END_M ? Math.PI / 2 : WYE_RAD;
  return { from: flow - wide, to: flow + wide };
}
