import {
  applySimilarity,
  azimuthBetween,
  distance,
  equalPoints,
  fitRigid,
  fitSimilarity,
  normalizeAzimuth,
  type Point,
  type Similarity,
  subtract,
} from '@footmark/geometry';
import type { ControlPoint, North } from '../document/frame';
import { isPath, type PointOwner, pointOwners, refKey } from '../document/pointOwners';
import type { Site } from '../document/site';
import { accuracySigma } from '../frame/accuracySigma';
import type { EarthFit } from '../frame/earthFit';
import { type EarthPoint, earthToLocal } from '../frame/projection';
import { settings } from '../rules/settings';
import { type Finding, finding, type Target } from './finding';
import { pointName } from './pointName';
import type { ResolvedPoint } from './resolvePoints';

/** Where north is and how the site lies on the earth. */
export type DerivedFrame = {
  /** True azimuth (rad) of the site's +y axis; 0 while it is not known. */
  readonly northAzimuth: number;
  /** Whether that was measured, or +y is only taken for north. */
  readonly known: boolean;
  readonly by: North['by'];
  /** Standard deviation (rad) of a north from control points by their accuracies; null when it comes from elsewhere. */
  readonly northSigma: number | null;
  /** Null without a control point. With one or more it holds, as far as north is known. */
  readonly toEarth: EarthFit | null;
  /** By control point: metres east and north from where it is said to be to where the fit puts it. */
  readonly residuals: ReadonlyMap<string, Point>;
};

/** A control point with its place in the plan and in the map about the middle of them all. */
type Known = {
  readonly control: ControlPoint;
  readonly plan: Point;
  readonly local: Point;
  readonly weight: number;
};

/** A control point this many of its accuracies off contradicts the others. */
const OUTLIER_FACTOR = 3;

/** Computes the site's frame. Problems with it are added to `findings`. */
export function deriveFrame(
  site: Site,
  points: ReadonlyMap<string, ResolvedPoint>,
  findings: Finding[],
): DerivedFrame {
  const { north, control } = site.frame;
  if (north.by === 'assumed' && control.length === 0) return unknownFrame(north.by);
  const owners = new Map(pointOwners(site).map((o) => [o.id, o]));
  const centre = centreOf(control);
  const known = centre === null ? [] : knownControl(control, points, centre, owners, findings);
  const result =
    north.by === 'control'
      ? northByControl(known, findings)
      : { azimuth: northByItself(north, points, owners, findings), toLocal: null, sigma: null };
  const azimuth = result.azimuth ?? 0;
  const toLocal = result.toLocal ?? heldAt(azimuth, known);
  const residuals = new Map(
    toLocal === null
      ? []
      : known.map((k) => [k.control.id, subtract(applySimilarity(toLocal, k.plan), k.local)]),
  );
  warnOfOutliers(known, residuals, owners, findings);
  return {
    northAzimuth: normalizeAzimuth(azimuth),
    known: result.azimuth !== null,
    by: north.by,
    northSigma: result.sigma,
    toEarth: toLocal === null || centre === null ? null : { centre, toLocal },
    residuals,
  };
}

function unknownFrame(by: North['by']): DerivedFrame {
  return { northAzimuth: 0, known: false, by, northSigma: null, toEarth: null, residuals: new Map() };
}

/** The middle of the control points; across the date line too. Null without any. */
function centreOf(control: readonly ControlPoint[]): EarthPoint | null {
  const [first] = control;
  if (first === undefined) return null;
  let [latitude, east] = [0, 0];
  for (const c of control) {
    latitude += c.latitudeDeg;
    const apart = c.longitudeDeg - first.longitudeDeg;
    east += apart - 360 * Math.round(apart / 360);
  }
  return {
    latitudeDeg: latitude / control.length,
    longitudeDeg: first.longitudeDeg + east / control.length,
  };
}

function knownControl(
  control: readonly ControlPoint[],
  points: ReadonlyMap<string, ResolvedPoint>,
  centre: EarthPoint,
  owners: ReadonlyMap<string, PointOwner>,
  findings: Finding[],
): readonly Known[] {
  return control.flatMap((c) => {
    const plan = points.get(refKey(c.point))?.at;
    if (plan === undefined) return [];
    const local = earthToLocal(centre, c);
    if (!local.ok || distance(local.value, { x: 0, y: 0 }) > settings.controlReach.value) {
      findings.push(
        finding('control-too-far', 'error', targetOf(c, owners), { reach: settings.controlReach.value }),
      );
      return [];
    }
    if (c.accuracy > settings.controlAccuracy.value) {
      const values = { accuracy: c.accuracy, limit: settings.controlAccuracy.value };
      findings.push(finding('control-inaccurate', 'warning', targetOf(c, owners), values));
    }
    const sigma = accuracySigma(c.accuracy);
    return [{ control: c, plan, local: local.value, weight: 1 / (sigma * sigma) }];
  });
}

type NorthFound = {
  readonly azimuth: number | null;
  readonly toLocal: Similarity | null;
  readonly sigma: number | null;
};

/** The rotation (and place) that fits all control points best, in true size, each weighted by its accuracy. */
function northByControl(known: readonly Known[], findings: Finding[]): NorthFound {
  const site: Target = { kind: 'site' };
  const none = { azimuth: null, toLocal: null, sigma: null };
  if (known.length < 2) {
    findings.push(finding('north-needs-two-control-points', 'warning', site, { points: known.length }));
    return none;
  }
  const pairs = known.map(({ plan, local, weight }) => ({ from: plan, to: local, weight }));
  const rigid = fitRigid(pairs);
  if (!rigid.ok) {
    findings.push(finding('control-points-coincide', 'error', site, {}));
    return none;
  }
  const sigma = rotationSigma(known);
  if (sigma > settings.northSigma.value) {
    const apart = Math.max(...known.flatMap((a) => known.map((b) => distance(a.plan, b.plan))));
    findings.push(finding('control-too-close', 'warning', site, { sigma, apart }));
  }
  const free = fitSimilarity(pairs);
  if (free.ok) {
    // an error across the lines from the middle turns, one along them stretches: both have the same deviation
    const off = free.value.scale - 1;
    if (Math.abs(off) > Math.max(OUTLIER_FACTOR * sigma, settings.tapeRelative.value)) {
      findings.push(finding('control-scale-differs', 'warning', site, { scale: free.value.scale }));
    }
  }
  return { azimuth: -rigid.value.rotation, toLocal: rigid.value.transform, sigma };
}

/** Standard deviation (rad) of the rotation: 1/√(Σ w·r²) with r the distances from the weighted middle (error propagation). */
function rotationSigma(known: readonly Known[]): number {
  const total = known.reduce((sum, k) => sum + k.weight, 0);
  const middle = known.reduce(
    (sum, { plan, weight }) => ({
      x: sum.x + (weight * plan.x) / total,
      y: sum.y + (weight * plan.y) / total,
    }),
    { x: 0, y: 0 },
  );
  const inertia = known.reduce((sum, k) => sum + k.weight * distance(k.plan, middle) ** 2, 0);
  return 1 / Math.sqrt(inertia);
}

/** The true azimuth of +y when it does not come from control points; null when it is not known. */
function northByItself(
  north: Exclude<North, { by: 'control' }>,
  points: ReadonlyMap<string, ResolvedPoint>,
  owners: ReadonlyMap<string, PointOwner>,
  findings: Finding[],
): number | null {
  if (north.by === 'assumed') return null;
  if (north.by === 'typed') return north.azimuth;
  const [a, b] = [points.get(refKey(north.from))?.at, points.get(refKey(north.to))?.at];
  if (a === undefined || b === undefined) return null;
  if (equalPoints(a, b)) {
    const values = { a: pointName(owners, north.from), b: pointName(owners, north.to) };
    findings.push(finding('north-line-has-no-length', 'error', { kind: 'site' }, values));
    return null;
  }
  // declination east positive: true = magnetic + declination
  const truth = north.by === 'line' ? north.azimuth : north.reading + north.declination;
  return truth - azimuthBetween(a, b);
}

/** Turned by a given north, and moved so that the weighted middles of the control points fall together. Null without any. */
function heldAt(northAzimuth: number, known: readonly Known[]): Similarity | null {
  if (known.length === 0) return null;
  const turn = { a: Math.cos(northAzimuth), b: -Math.sin(northAzimuth), tx: 0, ty: 0 };
  let [total, tx, ty] = [0, 0, 0];
  for (const { plan, local, weight } of known) {
    const shift = subtract(local, applySimilarity(turn, plan));
    total += weight;
    tx += weight * shift.x;
    ty += weight * shift.y;
  }
  return { ...turn, tx: tx / total, ty: ty / total };
}

function warnOfOutliers(
  known: readonly Known[],
  residuals: ReadonlyMap<string, Point>,
  owners: ReadonlyMap<string, PointOwner>,
  findings: Finding[],
): void {
  for (const { control } of known) {
    const v = residuals.get(control.id);
    const residual = v === undefined ? 0 : Math.hypot(v.x, v.y);
    if (residual <= OUTLIER_FACTOR * control.accuracy) continue;
    const values = { residual, accuracy: control.accuracy };
    findings.push(finding('control-disagrees', 'warning', targetOf(control, owners), values));
  }
}

/** The point on the ground that a control point is about. */
function targetOf({ point }: ControlPoint, owners: ReadonlyMap<string, PointOwner>): Target {
  const owner = owners.get(point.of);
  return { kind: owner !== undefined && isPath(owner) ? 'path' : 'feature', id: point.of, vertex: point.at };
}
