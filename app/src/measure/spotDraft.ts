import { distance, intersectCircles, type Point, pointAtAzimuth } from '@footmark/geometry';
import { type Derived, faceRadiusOf, offsetPoint, type Ref, refKey, type Spot } from '@footmark/site';

/** The ways to say where a point is that a form can take down. */
export const measuredBy = ['tapes', 'offset', 'bearing', 'between', 'coordinates'] as const;
export type MeasuredBy = (typeof measuredBy)[number];

/** A form half filled in: refs and numbers that may be missing. Lengths in metres, azimuth in radians. */
export type SpotDraft = {
  readonly by: MeasuredBy;
  readonly refs: readonly (Ref | null)[];
  readonly lengths: readonly (number | undefined)[];
  readonly azimuth: number | undefined;
  /** For two tapes: which crossing, seen from the first reference to the second. For an offset: which side. */
  readonly side: 'left' | 'right';
  readonly x: number | undefined;
  readonly y: number | undefined;
  /** For `between`: the share of the way. */
  readonly fraction: number;
};

export function emptyDraft(by: MeasuredBy): SpotDraft {
  return {
    by,
    refs: [null, null],
    lengths: [undefined, undefined],
    azimuth: undefined,
    side: 'left',
    x: undefined,
    y: undefined,
    fraction: 0.5,
  };
}

/** The form of a spot that was measured before; an empty one of the first kind for a spot put there by eye. */
export function draftOfSpot(spot: Spot, place: Point | null): SpotDraft {
  switch (spot.by) {
    case 'tapes': {
      return {
        ...emptyDraft('tapes'),
        refs: spot.tapes.map((t) => t.from),
        lengths: spot.tapes.map((t) => t.distance),
        side: spot.side,
      };
    }
    case 'offset':
      return {
        ...emptyDraft('offset'),
        refs: [spot.from, spot.to],
        lengths: [spot.along, Math.abs(spot.out)],
        side: spot.out > 0 ? 'right' : 'left',
      };
    case 'bearing':
      return { ...emptyDraft('bearing'), refs: [spot.from], lengths: [spot.distance], azimuth: spot.azimuth };
    case 'between':
      return { ...emptyDraft('between'), refs: [spot.from, spot.to], fraction: spot.fraction };
    case 'coordinates':
      return { ...emptyDraft('coordinates'), x: spot.x, y: spot.y };
    default:
      return { ...emptyDraft('coordinates'), x: place?.x, y: place?.y };
  }
}

/** What a form comes to: a spot and its place, nothing yet, or measurements that cannot be met. */
export type DraftOutcome =
  | { readonly is: 'ready'; readonly spot: Spot; readonly at: Point; readonly other: Point | null }
  | { readonly is: 'incomplete' }
  | { readonly is: 'same-reference' }
  | { readonly is: 'cannot-meet'; readonly code: 'too-short' | 'too-long'; readonly gap: number };

/** Works a form out against the present places of the points that it names. */
export function outcomeOf(draft: SpotDraft, derived: Derived): DraftOutcome {
  const place = (i: number) => {
    const ref = draft.refs[i];
    return ref ? derived.points.get(refKey(ref))?.at : undefined;
  };
  const [refA, refB] = [draft.refs[0], draft.refs[1]];
  const [a, b] = [place(0), place(1)];
  switch (draft.by) {
    case 'coordinates': {
      if (draft.x === undefined || draft.y === undefined) return { is: 'incomplete' };
      const at = { x: draft.x, y: draft.y };
      return { is: 'ready', spot: { by: 'coordinates', ...at }, at, other: null };
    }
    case 'bearing': {
      const length = draft.lengths[0];
      if (!refA || !a || length === undefined || draft.azimuth === undefined) return { is: 'incomplete' };
      return {
        is: 'ready',
        spot: { by: 'bearing', from: refA, azimuth: draft.azimuth, distance: length },
        at: pointAtAzimuth(a, draft.azimuth, length),
        other: null,
      };
    }
    case 'between':
    case 'offset': {
      if (!refA || !refB || !a || !b) return { is: 'incomplete' };
      if (refKey(refA) === refKey(refB)) return { is: 'same-reference' };
      if (draft.by === 'between') {
        const at = { x: a.x + (b.x - a.x) * draft.fraction, y: a.y + (b.y - a.y) * draft.fraction };
        return {
          is: 'ready',
          spot: { by: 'between', from: refA, to: refB, fraction: draft.fraction },
          at,
          other: null,
        };
      }
      const [along, away] = draft.lengths;
      if (along === undefined || away === undefined) return { is: 'incomplete' };
      const out = draft.side === 'right' ? away : -away;
      return {
        is: 'ready',
        spot: { by: 'offset', from: refA, to: refB, along, out },
        at: offsetPoint(a, b, along, out),
        other: away === 0 ? null : offsetPoint(a, b, along, -out),
      };
    }
    case 'tapes':
      return tapesOutcome(draft, derived);
  }
}

function tapesOutcome(draft: SpotDraft, derived: Derived): DraftOutcome {
  const tapes = draft.refs.flatMap((from, i) => {
    const distanceM = draft.lengths[i];
    const at = from ? derived.points.get(refKey(from))?.at : undefined;
    if (!from || !at || distanceM === undefined || distanceM <= 0) return [];
    const radius = distanceM + faceRadiusAt(from, derived);
    return [{ from, distance: distanceM, at, radius }];
  });
  const [a, b] = tapes;
  if (a === undefined || b === undefined) return { is: 'incomplete' };
  if (new Set(tapes.map((t) => refKey(t.from))).size < tapes.length) return { is: 'same-reference' };
  const crossing = intersectCircles(a.at, a.radius, b.at, b.radius);
  if (!crossing.ok) {
    if (crossing.code === 'same-centre') return { is: 'same-reference' };
    return { is: 'cannot-meet', code: crossing.code, gap: crossing.values?.gap ?? 0 };
  }
  const [left, right] = crossing.value.points;
  const at = draft.side === 'left' ? left : right;
  return {
    is: 'ready',
    spot: {
      by: 'tapes',
      tapes: tapes.map(({ from, distance: d }) => ({ from, distance: d })),
      side: draft.side,
    },
    at,
    other: distance(left, right) < 1e-3 ? null : draft.side === 'left' ? right : left,
  };
}

/** How far (m) before a point a tape to it ends: at the near face of a trunk or a pole. */
function faceRadiusAt(ref: Ref, derived: Derived): number {
  const feature = derived.features.get(ref.of)?.feature;
  return feature === undefined ? 0 : faceRadiusOf(feature);
}
