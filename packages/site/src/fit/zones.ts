import { ellipseFactor95, errorEllipse, type Gradient, type Solved } from '@footmark/adjust';
import { normalizeAzimuth, type Point } from '@footmark/geometry';
import { counterSigma } from '../derive/alongSigma';
import { sigmaOf } from '../rules/sigmaOf';
import type { Net } from './net';
import { type ObservationTag, sourceOf, type ZoneSource, zoneSources } from './observationTag';
import { addPlace, type NetReading, placeOfReading } from './readingPlace';
import type { SearchZone } from './runsFit';
import { legOf, strayPerMetre, strayVariance } from './stray';

/** Variances (m²) along the pipe and to the right of it, with their covariance. */
type Spread = { readonly along: number; readonly across: number; readonly mixed: number };

/** Where a mark is and how sure that is: its place with the unknowns of a solution, and its spread there. */
export type MarkSpread = {
  readonly at: Point;
  /** Azimuth (rad) of the way there, along which `along` counts. */
  readonly azimuth: number;
  readonly spread: Spread;
  readonly shares: ReadonlyMap<ZoneSource, { readonly along: number; readonly across: number }>;
};

/** A piece of a way is longer than this (m) but for rounding. */
const LEAST_LENGTH_M = 1e-6;

/**
 * Place and spread of a reading's mark by a solution of the net. The counts of readings that nothing else hangs on and the pipe's strays
 * away from where it was located are no unknowns: their variances come on top.
 */
export function markSpread(
  net: Net,
  solved: Solved,
  tags: readonly ObservationTag[],
  reading: NetReading,
): MarkSpread | null {
  const x = solved.estimates;
  const place = placeOfReading(reading, x, 0);
  const piece = place === null ? undefined : reading.on.way[place.piece];
  if (place === null || piece === undefined) return null;
  const { toward, perCable } = place;
  const right = { x: toward.y, y: -toward.x };
  const [alongRow, acrossRow] = [toward, right].map((axis) => {
    const row: { unknown: number; derivative: number }[] = [];
    const out = { add: (unknown: number, derivative: number) => void row.push({ unknown, derivative }) };
    addPlace(reading, x, place, axis, 1, out);
    return row;
  }) as [{ unknown: number; derivative: number }[], { unknown: number; derivative: number }[]];

  const on = net.derived.paths.get(piece.path);
  const where =
    piece.start + ((piece.end - piece.start) * place.into) / Math.max(place.length, LEAST_LENGTH_M);
  const leg = Math.min(Math.max(0, Math.floor(where)), (on?.points.length ?? 2) - 2);
  const stray = strayVariance(
    net.strays,
    { path: piece.path, leg, share: Math.min(1, Math.max(0, where - leg)) },
    on === undefined ? 0 : (legOf(on, leg)?.length ?? 0),
    strayPerMetre(sigmaOf(net.site, 'pipeStray')),
  );
  const count =
    reading.counter === null
      ? ((x[reading.on.scale] ?? 1) * perCable * counterSigma(net.site, reading.mark.run.resolution)) ** 2
      : 0;
  const [[aa = 0, ab = 0] = [], [, bb = 0] = []] = solved.propagate([alongRow, acrossRow]);
  const shares = sharesOf(solved, tags, alongRow, acrossRow);
  addShare(shares, 'counter', count, 0);
  addShare(shares, 'path', 0, stray);
  return {
    at: place.at,
    azimuth: normalizeAzimuth(Math.atan2(toward.x, toward.y)),
    spread: { along: aa + count, across: bb + stray, mixed: ab },
    shares,
  };
}

type Shares = Map<ZoneSource, { along: number; across: number }>;

function sharesOf(
  solved: Solved,
  tags: readonly ObservationTag[],
  along: Gradient,
  across: Gradient,
): Shares {
  const shares: Shares = new Map();
  const [a, b] = [solved.shares(along), solved.shares(across)];
  for (const [i, tag] of tags.entries()) addShare(shares, sourceOf(tag), a[i] ?? 0, b[i] ?? 0);
  return shares;
}

function addShare(shares: Shares, source: ZoneSource, along: number, across: number): void {
  const before = shares.get(source);
  shares.set(source, { along: (before?.along ?? 0) + along, across: (before?.across ?? 0) + across });
}

/** Deviations (m) below this add nothing that a person would dig for. */
const NOTHING_M = 0.001;

/**
 * The 95 % zone of a spread. `shift`: from where the mark is shown to where the solution puts it; the zone is about the mark
 * that is shown, so what it is off by counts like an error of its own. `diameter` (m): of the pipe.
 */
export function zoneOf({ azimuth, spread, shares }: MarkSpread, shift: Point, diameter: number): SearchZone {
  const toward = { x: Math.sin(azimuth), y: Math.cos(azimuth) };
  const [du, dv] = [shift.x * toward.x + shift.y * toward.y, shift.x * toward.y - shift.y * toward.x];
  const c = { xx: spread.along + du * du, yy: spread.across + dv * dv, xy: spread.mixed + du * dv };
  const { semiMajor, semiMinor, direction } = errorEllipse(c);
  const [along, across] = [ellipseFactor95 * Math.sqrt(c.xx), ellipseFactor95 * Math.sqrt(c.yy)];
  return {
    semiMajor: ellipseFactor95 * semiMajor,
    semiMinor: ellipseFactor95 * semiMinor,
    // x is along the pipe and y to its right: the angle from x to y is clockwise on the ground, as azimuths are
    azimuth: normalizeAzimuth(azimuth + direction),
    along,
    across,
    hole: { length: 2 * along, width: 2 * across + diameter },
    makeUp: zoneSources.flatMap((source) => {
      const share = shares.get(source);
      if (share === undefined) return [];
      const [a, b] = [Math.sqrt(share.along), Math.sqrt(share.across)];
      return Math.max(a, b) < NOTHING_M ? [] : [{ source, along: a, across: b }];
    }),
  };
}
