import type { Label } from '../label';
import type { Box } from './box';
import type { Hull } from './paperGrid';

/** A place to try; the cheapest free one is taken. */
export type Candidate = Readonly<{ box: Box; cost: number }>;

/** Gap (mm) between a symbol and its text, and between a line and the text along it. */
const GAP_MM = 0.5;
/** A leader is no longer than this, mm. */
export const LONGEST_LEADER_MM = 13;

/** Beyond about 2 mm a text is not seen to belong to its symbol without a leader. */
const NEAR_MM = [0, 1.2] as const;
const FAR_MM = [3, 5, 7.5, 10, 12.5] as const;

/**
 * Directions in the order in which cartography prefers them: upper right, right, upper left, left, lower right, above, lower left, below
 * (general cartographic practice, from memory).
 */
const AROUND = [
  [1, 1],
  [1, 0],
  [-1, 1],
  [-1, 0],
  [1, -1],
  [0, 1],
  [-1, -1],
  [0, -1],
] as const;
/** A leader has more ways to go. */
const FAR_AROUND = [
  ...AROUND,
  [2, 1],
  [-2, 1],
  [2, -1],
  [-2, -1],
  [1, 2],
  [-1, 2],
  [1, -2],
  [-1, -2],
] as const;
const DIRECTION_COST = 0.12;
/** Per mm from the symbol, near it. */
const DISTANCE_COST = 0.3;
/** A leader at all, its direction, and each of its mm. */
const LEADER_COST = 1;
const LEADER_DIRECTION_COST = 0.05;
const LEADER_MM_COST = 0.16;
/** Slides along a line, as shares of the room there is on either side of the anchor. */
const SLIDES = [0, 0.2, -0.2, 0.4, -0.4, 0.6, -0.6, 0.8, -0.8, 1, -1] as const;
const SLIDE_COST = 0.25;
const OTHER_SIDE_COST = 0.15;
/** The next of several places of one kind, and a text that stands where a level one would do as well. */
const NEXT_PLACE_COST = 0.1;
/** A place inside a crown, rather than beside its trunk. */
const INSIDE_COST = 0.9;
const STANDING_COST = 0.45;
/** Lines that lean to the left of straight up by less than this (rad) are still read upwards, as texts on a plan are. */
const UPRIGHT_RAD = 0.17;

/** A direction, unit long, the signs that say which corner or side of the box faces the anchor, the reach and the cost. */
type Reach = Readonly<{ x: number; y: number; signX: number; signY: number; mm: number; cost: number }>;

function reaches(
  directions: readonly (readonly [number, number])[],
  distances: readonly number[],
  cost: (mm: number, preference: number) => number,
): readonly Reach[] {
  return distances
    .flatMap((mm) =>
      directions.map(([dx, dy], preference) => {
        const length = Math.hypot(dx, dy);
        const [signX, signY] = [Math.sign(dx), Math.sign(dy)];
        return { x: dx / length, y: dy / length, signX, signY, mm, cost: cost(mm, preference) };
      }),
    )
    .sort((a, b) => a.cost - b.cost);
}

const NEAR_REACHES = reaches(AROUND, NEAR_MM, (mm, k) => DISTANCE_COST * mm + DIRECTION_COST * k);
const FAR_REACHES = reaches(
  FAR_AROUND,
  FAR_MM,
  (mm, k) => LEADER_COST + LEADER_MM_COST * mm + LEADER_DIRECTION_COST * k,
);

/** Anchor (mm), half sizes (mm) with margin, and paper mm to the metre. */
export type Fit = Readonly<{ x: number; y: number; halfW: number; halfH: number; mmPerMetre: number }>;

/** Places beside the anchor, or over it and along its line, that need no leader. */
export function nearCandidates(label: Label, fit: Fit): readonly Candidate[] {
  switch (label.seat) {
    case 'around':
      return [...NEAR_REACHES.map((reach) => at(reach, label, fit)), ...inside(label, fit)];
    case 'centre':
      return centred(label, fit);
    case 'along':
      return along(label, fit, label.along?.side === undefined ? [1, -1] : sidesFrom(label.along));
    case 'on-line':
      return along(label, fit, [0]);
  }
}

/** Places further off, to be joined to the anchor by a leader; cheapest first, made one by one. */
export function* farCandidates(label: Label, fit: Fit): Generator<Candidate> {
  for (const reach of FAR_REACHES) yield at(reach, label, fit);
}

/** Holds all far candidates. */
export function farHull({ clear }: Label, { x, y, halfW, halfH }: Fit): Hull {
  const reach = clear + GAP_MM + (FAR_MM.at(-1) ?? 0);
  const [wide, high] = [reach + 2 * halfW, reach + 2 * halfH];
  return { minX: x - wide, minY: y - high, maxX: x + wide, maxY: y + high };
}

function at(reach: Reach, label: Label, fit: Fit): Candidate {
  const r = label.clear + GAP_MM + reach.mm;
  const x = fit.x + reach.x * r + reach.signX * fit.halfW;
  const y = fit.y + reach.y * r + reach.signY * fit.halfH;
  return { box: level(fit, x, y), cost: reach.cost };
}

/** Over the places that do as well as one beside the anchor. */
function inside({ elsewhere = [] }: Label, fit: Fit): readonly Candidate[] {
  return elsewhere.map((place, i) => ({
    box: level(fit, place.x * fit.mmPerMetre, place.y * fit.mmPerMetre),
    cost: INSIDE_COST + NEXT_PLACE_COST * i,
  }));
}

function level(fit: Fit, x: number, y: number): Box {
  return { x, y, ux: 1, uy: 0, halfW: fit.halfW, halfH: fit.halfH };
}

/**
 * Over the anchor or over the other places, level, moved by half a size, or standing. With a leader in reserve it may also move
 * by a whole size, beside the anchor.
 */
function centred(label: Label, fit: Fit): readonly Candidate[] {
  const shares = label.whenCrowded === 'leave-out' ? [0.5] : [0.5, 1];
  const places = [label.at, ...(label.elsewhere ?? [])];
  return places.flatMap((place, i) => {
    const [x, y] = [place.x * fit.mmPerMetre, place.y * fit.mmPerMetre];
    const base = NEXT_PLACE_COST * i;
    const moved = shares.flatMap((share) =>
      AROUND.map(([dx, dy]) => ({
        box: level(fit, x + dx * share * fit.halfW, y + dy * share * 2 * fit.halfH),
        cost: base + SLIDE_COST * (share + Math.abs(dx)),
      })),
    );
    const standing = { ...level(fit, x, y), ux: 0, uy: 1 };
    return [{ box: level(fit, x, y), cost: base }, { box: standing, cost: base + STANDING_COST }, ...moved];
  });
}

function along(label: Label, fit: Fit, sides: readonly number[]): readonly Candidate[] {
  if (label.along === undefined) return [];
  const half = (label.along.span * fit.mmPerMetre) / 2;
  // from the middle towards the end near which the text is to stay
  const ahead = Math.max(0, half - (label.along.fromEndMm ?? half));
  const room = half - ahead - fit.halfW;
  if (room < 0) return [];
  const azimuth = readableAzimuth(label.along.azimuth);
  const [ux, uy] = [Math.sin(azimuth), Math.cos(azimuth)];
  const x = fit.x + ahead * Math.sin(label.along.azimuth);
  const y = fit.y + ahead * Math.cos(label.along.azimuth);
  return SLIDES.flatMap((slide) =>
    sides.map((side, i) => {
      const off = side * (label.clear + GAP_MM + fit.halfH);
      const box = {
        x: x + slide * room * ux - off * uy,
        y: y + slide * room * uy + off * ux,
        ux,
        uy,
        halfW: fit.halfW,
        halfH: fit.halfH,
      };
      return { box, cost: SLIDE_COST * Math.abs(slide) * 2 + OTHER_SIDE_COST * i };
    }),
  );
}

/** Left of the text first (1), or right of it (-1): sides of a line turn over when its text has to. */
function sidesFrom({ azimuth, side }: NonNullable<Label['along']>): readonly number[] {
  const sameWay = Math.cos(readableAzimuth(azimuth) - azimuth) > 0;
  return (side === 'left') === sameWay ? [1, -1] : [-1, 1];
}

/** The direction of a line in which its text is upright: rightwards, or upwards when it stands. */
function readableAzimuth(azimuth: number): number {
  const turned = ((azimuth % Math.PI) + Math.PI) % Math.PI;
  return turned > Math.PI - UPRIGHT_RAD ? turned - Math.PI : turned;
}
