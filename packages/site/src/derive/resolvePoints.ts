import {
  azimuthBetween,
  COINCIDENT_M,
  distance,
  interpolate,
  longChord,
  normalizeAzimuth,
  type Point,
  pointAtAzimuth,
  traverseClosure,
} from '@footmark/geometry';
import { dependencyOrder } from '../document/dependencyOrder';
import type { Feature } from '../document/feature';
import { isPath, neededPoints, type PointOwner, pointOwners, refKey } from '../document/pointOwners';
import type { Site } from '../document/site';
import { followsPrevious, type LegSpot, type Ref, type Spot } from '../document/spot';
import { type Anchor, commonAnchor } from './anchor';
import { balancedCorners, type Closing, hasClosing, isBalanced, measuredLegs } from './closing';
import { faceRadiusOf } from './faceRadius';
import { type Finding, finding, type Target } from './finding';
import { pointName } from './pointName';
import { placeOfManyTapes, placeOfTwoTapes, type TapeCircle, type TapeReport } from './tapedPlace';

/**
 * Where a point is. `measured`: it was taped, typed or computed from such, or is the corner from which a measured outline is
 * counted; not put there by eye.
 */
export type ResolvedPoint = {
  readonly at: Point;
  readonly measured: boolean;
  /** The key of the point that it is: itself, or the one that it is `at`, followed to the end. */
  readonly is: string;
  readonly anchor: Anchor;
  /** For three and more tapes: taped minus computed distance (m), in the order of the tapes. */
  readonly tapeResiduals?: readonly number[];
  /** For the end of a curve: the azimuth of its tangent there. */
  readonly arrival?: number;
};

export type ResolvedPoints = {
  readonly points: ReadonlyMap<string, ResolvedPoint>;
  /** By feature: how the outlines with a closing course close, as they were measured. */
  readonly closings: ReadonlyMap<string, Closing>;
  readonly findings: readonly Finding[];
};

/** A place before it is known whose point it is and what it hangs on. */
type Place = Omit<ResolvedPoint, 'is' | 'anchor'>;

type Job = { readonly owner: PointOwner; readonly index: number; readonly key: string };

/**
 * Computes the place of every point of the site from how it was measured. A point whose measurements cannot be met lies where they
 * come nearest to it, counts as assumed, and a finding says why; a point measured from itself is left out. The corners of
 * an outline that is to be balanced are where its misclosure, shared out, brings them.
 */
export function resolvePoints(site: Site): ResolvedPoints {
  const owners = new Map(pointOwners(site).map((o) => [o.id, o]));
  const points = new Map<string, ResolvedPoint>();
  const closings = new Map<string, Closing>();
  const findings: Finding[] = [];
  const waiting: Job[] = [];
  const settle = (job: Job): boolean => {
    const spot = job.owner.vertices[job.index]?.spot;
    const place = placeOf(site, owners, points, job, findings);
    if (spot === undefined || place === null) return false;
    const is = (spot.by === 'at' ? points.get(refKey(spot.point))?.is : undefined) ?? job.key;
    const anchor = anchorOf(job, place, spot, points);
    const { at, measured, arrival, tapeResiduals } = place;
    // the common case without a copy of the place: there are thousands
    const plain = arrival === undefined && tapeResiduals === undefined;
    points.set(job.key, plain ? { at, measured, is, anchor } : { ...place, is, anchor });
    if (isBalanced(job.owner) && job.index === job.owner.vertices.length - 1)
      balance(job.owner, points, closings);
    return true;
  };
  for (const owner of owners.values()) {
    for (const [index, v] of owner.vertices.entries()) {
      const job = { owner, index, key: refKey({ of: owner.id, at: v.id }) };
      if (!settle(job)) waiting.push(job);
    }
  }
  for (const job of inOrder(waiting, owners)) settle(job);
  for (const feature of site.features) {
    if (!hasClosing(feature) || closings.has(feature.id)) continue;
    const legs = legsOf(feature, points);
    if (legs !== null) closings.set(feature.id, { closure: traverseClosure(legs), balanced: false });
  }
  return { points, closings, findings };
}

/** Moves the corners of an outline, all of which are in place as measured, so that its sides close. */
function balance(
  feature: Feature & { closing: LegSpot },
  points: Map<string, ResolvedPoint>,
  closings: Map<string, Closing>,
): void {
  const keys = feature.vertices.map((v) => refKey({ of: feature.id, at: v.id }));
  const legs = legsOf(feature, points);
  const first = points.get(keys[0] ?? '');
  if (legs === null || first === undefined) return;
  closings.set(feature.id, { closure: traverseClosure(legs), balanced: true });
  let from = first.at;
  for (const [i, at] of balancedCorners(first.at, legs).entries()) {
    const key = keys[i + 1] ?? '';
    const spot = feature.vertices[i + 1]?.spot;
    const arrival = spot?.by === 'arc' ? arrivalAt(azimuthBetween(from, at), spot.sweep) : null;
    const anchor = points.get(key)?.anchor ?? null;
    points.set(key, { at, measured: true, is: key, anchor, ...(arrival === null ? {} : { arrival }) });
    from = at;
  }
}

/** The sides of an outline with a closing course as they were measured; null while a corner of it has no place. */
function legsOf(feature: Feature & { closing: LegSpot }, points: ReadonlyMap<string, ResolvedPoint>) {
  const places = feature.vertices.flatMap((v) => points.get(refKey({ of: feature.id, at: v.id })) ?? []);
  if (places.length < feature.vertices.length) return null;
  const heading = headingOut(places.at(-1), places.at(-2));
  return measuredLegs(
    feature,
    places.map((p) => p.at),
    heading,
  );
}

/** The azimuth in which a curve of this chord and sweep arrives. */
function arrivalAt(chord: number, sweep: number): number {
  return normalizeAzimuth(chord + sweep / 2);
}

/** Points measured from points that come later in the file, each after what it needs. */
function inOrder(waiting: readonly Job[], owners: ReadonlyMap<string, PointOwner>): readonly Job[] {
  if (waiting.length === 0) return waiting;
  const jobs = new Map(waiting.map((job) => [job.key, job]));
  // a corner that is balanced has its place only when the last of its outline has
  const lastOf = new Map<string, string>();
  for (const owner of owners.values()) {
    if (!isBalanced(owner)) continue;
    const last = refKey({ of: owner.id, at: owner.vertices.at(-1)?.id ?? '' });
    for (const v of owner.vertices.slice(1)) lastOf.set(refKey({ of: owner.id, at: v.id }), last);
  }
  const needs = new Map(
    waiting.map((job) => {
      const own = isBalanced(job.owner);
      const needed = neededPoints(job.owner, job.index);
      return [job.key, own ? needed : needed.flatMap((key) => [key, lastOf.get(key) ?? []].flat())];
    }),
  );
  return dependencyOrder(needs).order.flatMap((key) => jobs.get(key) ?? []);
}

function anchorOf(
  { owner, index, key }: Job,
  place: Place,
  spot: Spot,
  points: ReadonlyMap<string, ResolvedPoint>,
): Anchor {
  if (spot.by === 'finger') return key;
  if (spot.by === 'coordinates') return null;
  // measurements that cannot be met leave a guess
  if (!place.measured && spot.by !== 'between' && spot.by !== 'at') return key;
  const from = neededPoints(owner, index).flatMap((needed) => points.get(needed) ?? []);
  return commonAnchor(from.map((p) => p.anchor));
}

function placeOf(
  site: Site,
  owners: ReadonlyMap<string, PointOwner>,
  points: ReadonlyMap<string, ResolvedPoint>,
  { owner, index }: Job,
  findings: Finding[],
): Place | null {
  const v = owner.vertices[index];
  if (v === undefined) return null;
  const target: Target = { kind: isPath(owner) ? 'path' : 'feature', id: owner.id, vertex: v.id };
  const of = (ref: Ref) => points.get(refKey(ref));
  const before = (steps: number) => {
    const earlier = owner.vertices[index - steps];
    return earlier === undefined ? undefined : points.get(refKey({ of: owner.id, at: earlier.id }));
  };
  const spot: Spot = v.spot;
  switch (spot.by) {
    case 'finger': {
      // where a measured outline was put down: as sure as the corners that are counted from it
      const next = owner.vertices[index + 1]?.spot;
      const anchors = index === 0 && next !== undefined && followsPrevious(next);
      return { at: { x: spot.x, y: spot.y }, measured: anchors };
    }
    case 'coordinates':
      return { at: { x: spot.x, y: spot.y }, measured: true };
    case 'at': {
      // the place alone: the tangent of a curve that ends there is that curve's own
      const same = of(spot.point);
      return same ? { at: same.at, measured: same.measured } : null;
    }
    case 'bearing': {
      const from = of(spot.from);
      return from ? { at: pointAtAzimuth(from.at, spot.azimuth, spot.distance), measured: true } : null;
    }
    case 'between': {
      const [a, b] = [of(spot.from), of(spot.to)];
      return a && b
        ? { at: interpolate(a.at, b.at, spot.fraction), measured: a.measured && b.measured }
        : null;
    }
    case 'course': {
      const from = before(1);
      return from ? { at: pointAtAzimuth(from.at, spot.azimuth, spot.distance), measured: true } : null;
    }
    case 'turn': {
      const from = before(1);
      const heading = headingOut(from, before(2));
      if (!from || heading === null) return null;
      return { at: pointAtAzimuth(from.at, heading + spot.turn, spot.distance), measured: true };
    }
    case 'arc': {
      const from = before(1);
      const heading = headingOut(from, before(2));
      const chord = spot.chord ?? (heading === null ? null : heading + spot.sweep / 2);
      if (!from || chord === null) return null;
      return {
        at: pointAtAzimuth(from.at, chord, longChord(spot.radius, Math.abs(spot.sweep))),
        measured: true,
        arrival: arrivalAt(chord, spot.sweep),
      };
    }
    case 'offset': {
      const [a, b] = [of(spot.from), of(spot.to)];
      if (!a || !b) return null;
      if (distance(a.at, b.at) < COINCIDENT_M) {
        findings.push(
          finding('line-has-no-length', 'error', target, {
            a: pointName(owners, spot.from),
            b: pointName(owners, spot.to),
          }),
        );
        return { at: a.at, measured: false };
      }
      return { at: offsetPoint(a.at, b.at, spot.along, spot.out), measured: true };
    }
    case 'tapes': {
      const tapes = spot.tapes.flatMap((tape): TapeCircle[] => {
        const centre = of(tape.from)?.at;
        const owner = owners.get(tape.from.of);
        const face = owner === undefined || isPath(owner) ? 0 : faceRadiusOf(owner);
        return centre === undefined ? [] : [{ centre, radius: tape.distance + face }];
      });
      if (tapes.length < spot.tapes.length) return null;
      const report: TapeReport = {
        say: (code, severity, values) => findings.push(finding(code, severity, target, values)),
        names: (i) => {
          const from = spot.tapes[i]?.from;
          return from === undefined ? '' : pointName(owners, from);
        },
      };
      const [a, b] = tapes;
      if (a !== undefined && b !== undefined && tapes.length === 2)
        return placeOfTwoTapes([a, b], spot.side, report);
      return placeOfManyTapes(tapes, spot.side, site.tape.sigma, report);
    }
  }
}

/** The direction in which a line leaves a point when it goes straight on: along the leg to it, or the tangent of the curve. */
function headingOut(from: Place | undefined, earlier: Place | undefined): number | null {
  if (from === undefined) return null;
  return from.arrival ?? (earlier === undefined ? null : azimuthBetween(earlier.at, from.at));
}

/** The point `along` the line from a to b, then `out` square off it, right of that direction positive. */
export function offsetPoint(a: Point, b: Point, along: number, out: number): Point {
  const heading = azimuthBetween(a, b);
  return pointAtAzimuth(pointAtAzimuth(a, heading, along), heading + Math.PI / 2, out);
}
