import type { Label } from '../label';
import type { Box } from './box';

/** A place to try; the cheapest free one is taken. */
export type Candidate = Readonly<{ box: Box; cost: number }>;

/** Gap (mm) between a symbol and its text, and between a line and the text along it. */
const GAP_MM = 0.5;
/** A leader is no longer than this, mm. */
export const LONGEST_LEADER_MM = 26;

/** Beyond about 2 mm a text is not seen to belong to its symbol without a leader. */
const NEAR_MM = [0, 1.2] as const;
const FAR_MM = [4, 6.5, 9, 12, 15, 18, 21, 24] as const;

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
/** Per mm from the symbol: near it, and once there is a leader. */
const DISTANCE_COST = 0.3;
const LEADER_COST = 0.16;
/** Slides along a line, as shares of the room there is on either side of the anchor. */
const SLIDES = [0, 0.35, -0.35, 0.7, -0.7, 1, -1] as const;
const SLIDE_COST = 0.25;
const OTHER_SIDE_COST = 0.15;
/** Lines that lean to the left of straight up by less than this (rad) are still read upwards, as texts on a plan are. */
const UPRIGHT_RAD = 0.17;

/** Anchor (mm), half sizes (mm) with margin, and paper mm to the metre. */
export type Fit = Readonly<{ x: number; y: number; halfW: number; halfH: number; mmPerMetre: number }>;

/** Places beside the anchor, or over it and along its line, that need no leader. */
export function nearCandidates(label: Label, fit: Fit): readonly Candidate[] {
  switch (label.seat) {
    case 'around':
      return around(label, fit, AROUND, NEAR_MM, DISTANCE_COST);
    case 'centre':
      return centred(fit);
    case 'along':
      return along(label, fit, label.along?.side === undefined ? [1, -1] : sidesFrom(label.along));
    case 'on-line':
      return along(label, fit, [0]);
  }
}

/** Places further off, to be joined to the anchor by a leader. */
export function farCandidates(label: Label, fit: Fit): readonly Candidate[] {
  return around(label, fit, FAR_AROUND, FAR_MM, LEADER_COST);
}

function level(fit: Fit, x: number, y: number): Box {
  return { x, y, ux: 1, uy: 0, halfW: fit.halfW, halfH: fit.halfH };
}

function around(
  label: Label,
  fit: Fit,
  directions: readonly (readonly [number, number])[],
  reaches: readonly number[],
  perMm: number,
): readonly Candidate[] {
  return reaches.flatMap((reach) =>
    directions.map(([dx, dy], preference) => {
      const r = (label.clear + GAP_MM + reach) / Math.hypot(dx, dy);
      const box = level(
        fit,
        fit.x + dx * r + Math.sign(dx) * fit.halfW,
        fit.y + dy * r + Math.sign(dy) * fit.halfH,
      );
      return { box, cost: DIRECTION_COST * preference + perMm * reach };
    }),
  );
}

/** Over the anchor, and moved up to its own size to every side. */
function centred(fit: Fit): readonly Candidate[] {
  const places: Candidate[] = [{ box: level(fit, fit.x, fit.y), cost: 0 }];
  for (const share of [0.5, 1] as const) {
    for (const [dx, dy] of AROUND) {
      const box = level(fit, fit.x + dx * share * fit.halfW, fit.y + dy * share * 2 * fit.halfH);
      places.push({ box, cost: SLIDE_COST * (share + Math.abs(dx)) });
    }
  }
  return places;
}

function along(label: Label, fit: Fit, sides: readonly number[]): readonly Candidate[] {
  if (label.along === undefined) return [];
  const room = (label.along.span * fit.mmPerMetre) / 2 - fit.halfW;
  if (room < 0) return [];
  const azimuth = readableAzimuth(label.along.azimuth);
  const [ux, uy] = [Math.sin(azimuth), Math.cos(azimuth)];
  return SLIDES.flatMap((slide) =>
    sides.map((side, i) => {
      const off = side * (label.clear + GAP_MM + fit.halfH);
      const box = {
        x: fit.x + slide * room * ux - off * uy,
        y: fit.y + slide * room * uy + off * ux,
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
export function readableAzimuth(azimuth: number): number {
  const turned = ((azimuth % Math.PI) + Math.PI) % Math.PI;
  return turned > Math.PI - UPRIGHT_RAD ? turned - Math.PI : turned;
}
