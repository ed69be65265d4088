import type { Point } from '@footmark/geometry';
import { PLAN_LIMIT_M } from '@footmark/site';
import type { IncomingFinding, IncomingNote } from '@footmark/words';
import type { IncomingPoint, IncomingThing } from '../incoming';
import type { IncomingSite } from './incomingSite';

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

/** What a preview is made with. */
export type PreviewSetting = {
  readonly notes: readonly IncomingNote[];
  readonly site: IncomingSite;
  readonly findings: readonly IncomingFinding[];
  readonly distance: number | null;
  /** Metres to a unit of height. */
  readonly heightM: number;
  /** All things, also when none is placed. */
  readonly of?: readonly IncomingThing[];
};

/** Things in their places, counted, with what is to be said of them. A thing with a place that has none on the map is left out. */
export function preview(
  things: readonly IncomingThing[],
  place: (p: IncomingPoint) => Point | null,
  { notes, findings: known, distance, heightM, site, of = things }: PreviewSetting,
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
