import { fail, ok, type Point, type Result } from '@footmark/geometry';
import { type Derived, type EarthFit, earthToPlan, PLAN_LIMIT_M } from '@footmark/site';
import type { IncomingFinding, IncomingNote, PlacingProblem } from '@footmark/words';
import type { Incoming, IncomingPoint, IncomingThing } from '../incoming';
import { tableThings } from '../table/tableThings';
import { type IncomingAnswers, type IncomingFrame, incomingFrame } from './incomingAnswers';
import { eastNorth, toEarth } from './toEarth';
import { whereabouts } from './whereabouts';

/** What must be known of a site to place things in it; plain data, for a worker too. */
export type IncomingSite = {
  readonly toEarth: EarthFit | null;
  /** The middle of its yard (m); null for an empty one. */
  readonly middle: Point | null;
};

export function incomingSite({ frame, features }: Pick<Derived, 'frame' | 'features'>): IncomingSite {
  const points = [...features.values()].flatMap((f) => f.points);
  const middle = (values: readonly number[]) => (Math.min(...values) + Math.max(...values)) / 2;
  return {
    toEarth: frame.toEarth,
    middle:
      points.length === 0 ? null : { x: middle(points.map((p) => p.x)), y: middle(points.map((p) => p.y)) },
  };
}

/** A thing with its places in the plan (m). */
export type PlacedThing = Omit<IncomingThing, 'points'> & {
  readonly points: readonly Point[];
  /** Of a point: its level in metres, where the file has one. */
  readonly height: number | null;
};

/** What would come in, and where it would lie. */
export type PlacedIncoming = {
  readonly things: readonly PlacedThing[];
  readonly counts: Readonly<Record<IncomingThing['shape'], number>>;
  /** In the plan (m); null when nothing has a place. */
  readonly extent: { readonly min: Point; readonly max: Point } | null;
  /** From the site (m) to the middle of it; null where the site is empty or it is nowhere. */
  readonly distance: number | null;
  readonly notes: readonly IncomingNote[];
  readonly findings: readonly IncomingFinding[];
  /** Nothing speaks against taking it, short of people's own eyes. */
  readonly canBeTaken: boolean;
};

/** A yard is tens of metres; what is larger or smaller than this (m) is in another unit, or no yard. */
const [LARGE_M, SMALL_M] = [5000, 0.5];

/** Puts what came in into the plan of a site, as it was answered. Nothing is changed yet: it is for people to look at. */
export function placeIncoming(
  incoming: Incoming,
  answers: IncomingAnswers,
  site: IncomingSite,
): Result<PlacedIncoming, PlacingProblem> {
  const framed = incomingFrame(incoming, answers);
  if (!framed.ok) return framed;
  const frame = framed.value;
  const made = incoming.format === 'table' ? tableThings(incoming.rows, frame.order) : ok(incoming);
  if (!made.ok) return made;
  const { things } = made.value;
  const notes = [...incoming.notes, ...(incoming.format === 'table' ? made.value.notes : [])];
  if (frame.coordinates.is === 'site') {
    const { metres } = frame.coordinates.unit;
    const place = (p: IncomingPoint): Point => {
      const [x, y] = eastNorth(p, frame);
      return { x: x * metres, y: y * metres };
    };
    return ok(preview(things, place, { notes, findings: [], distance: null, heightM: metres, site }));
  }
  const fit = site.toEarth;
  if (fit === null) return fail('site-not-on-the-earth');
  return ok(onTheEarth(things, frame, fit, { notes, site }));
}

type About = {
  readonly notes: readonly IncomingNote[];
  readonly site: IncomingSite;
};

function onTheEarth(
  things: readonly IncomingThing[],
  frame: IncomingFrame,
  fit: EarthFit,
  { notes, site }: About,
): PlacedIncoming {
  const { distance, findings } = whereabouts(middleOf(things, frame), fit.centre, frame);
  const place = (p: IncomingPoint): Point | null => {
    const earth = toEarth(eastNorth(p, frame), frame);
    const plan = earth.ok ? earthToPlan(fit, earth.value) : earth;
    return plan.ok ? plan.value : null;
  };
  // heights of degrees are in metres by all three formats; those of a grid are in its unit
  const heightM = frame.coordinates.is === 'earth' ? 1 : frame.coordinates.unit.metres;
  const wrong = findings.some((f) => f.severity === 'error');
  return preview(wrong ? [] : things, place, { notes, findings, distance, heightM, site, of: things });
}

/** The middle of the box about all points, in the file's own coordinates; of degrees, across the date line too. */
function middleOf(things: readonly IncomingThing[], frame: IncomingFrame): readonly [number, number] {
  const first = things[0]?.points[0];
  const from = first === undefined ? 0 : eastNorth(first, frame)[0];
  const earth = frame.coordinates.is === 'earth';
  // degrees the short way round from the first of them
  const eastward = (e: number) => (earth ? e - 360 * Math.round((e - from) / 360) : e);
  let [west, east, south, north] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { points } of things) {
    for (const p of points) {
      const [e, n] = eastNorth(p, frame);
      west = Math.min(west, eastward(e));
      east = Math.max(east, eastward(e));
      south = Math.min(south, n);
      north = Math.max(north, n);
    }
  }
  const middle = (west + east) / 2;
  return [earth && Math.abs(middle) > 180 ? middle - 360 * Math.sign(middle) : middle, (south + north) / 2];
}

type Setting = About & {
  readonly findings: readonly IncomingFinding[];
  readonly distance: number | null;
  /** Metres to a unit of height. */
  readonly heightM: number;
  /** All things, also when none is placed. */
  readonly of?: readonly IncomingThing[];
};

function preview(
  things: readonly IncomingThing[],
  place: (p: IncomingPoint) => Point | null,
  { notes, findings: known, distance, heightM, site, of = things }: Setting,
): PlacedIncoming {
  const placed: PlacedThing[] = [];
  let nowhere = 0;
  let [min, max] = [
    { x: Infinity, y: Infinity },
    { x: -Infinity, y: -Infinity },
  ];
  for (const thing of things) {
    const points = thing.points.map(place);
    if (!points.every((p) => p !== null && Math.abs(p.x) <= PLAN_LIMIT_M && Math.abs(p.y) <= PLAN_LIMIT_M)) {
      nowhere += 1;
      continue;
    }
    const found = points.filter((p) => p !== null);
    for (const p of found) {
      min = { x: Math.min(min.x, p.x), y: Math.min(min.y, p.y) };
      max = { x: Math.max(max.x, p.x), y: Math.max(max.y, p.y) };
    }
    const height = thing.shape === 'point' ? (thing.points[0]?.height ?? null) : null;
    placed.push({ ...thing, points: found, height: height === null ? null : height * heightM });
  }
  const extent = placed.length === 0 ? null : { min, max };
  const findings = [
    ...known,
    ...sizeFindings(extent, placed.length),
    ...(nowhere === 0
      ? []
      : [
          {
            code: 'no-place',
            severity: nowhere === of.length ? 'error' : 'warning',
            count: nowhere,
          } as const,
        ]),
  ];
  const counts = { point: 0, line: 0, area: 0 };
  for (const { shape } of of) counts[shape] += 1;
  return {
    things: placed,
    counts,
    extent,
    distance: distance ?? planDistance(extent, site),
    notes,
    findings,
    canBeTaken: placed.length > 0 && findings.every((f) => f.severity !== 'error'),
  };
}

function sizeFindings(extent: PlacedIncoming['extent'], count: number): readonly IncomingFinding[] {
  if (extent === null) return [];
  const metres = Math.hypot(extent.max.x - extent.min.x, extent.max.y - extent.min.y);
  if (metres > LARGE_M) return [{ code: 'larger-than-a-yard', severity: 'warning', metres }];
  return metres < SMALL_M && count > 1 ? [{ code: 'smaller-than-a-yard', severity: 'warning', metres }] : [];
}

/** Between the middles of what came in and of the yard (m); null for an empty yard. */
function planDistance(extent: PlacedIncoming['extent'], { middle }: IncomingSite): number | null {
  if (extent === null || middle === null) return null;
  const { min, max } = extent;
  return Math.hypot((min.x + max.x) / 2 - middle.x, (min.y + max.y) / 2 - middle.y);
}
