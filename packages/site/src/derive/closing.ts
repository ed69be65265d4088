import {
  azimuthBetween,
  compassBalance,
  distance,
  normalizeAzimuth,
  type Point,
  type TraverseClosure,
  type TraverseLeg,
} from '@footmark/geometry';
import type { Feature } from '../document/feature';
import type { PointOwner } from '../document/pointOwners';
import { followsPrevious, type LegSpot } from '../document/spot';

/** How the sides of an outline with a closing course come back to their first point, and whether that was shared out. */
export type Closing = { readonly closure: TraverseClosure; readonly balanced: boolean };

/** An outline whose last side was measured as well. */
export function hasClosing(owner: PointOwner): owner is Feature & { closing: LegSpot } {
  return 'closing' in owner && owner.closing !== undefined;
}

/** Where the first vertex is that does not follow from the one before it and so holds still; null when all but the first do. */
export function heldVertex(feature: Feature): string | null {
  return feature.vertices.slice(1).find((v) => !followsPrevious(v.spot))?.id ?? null;
}

/** Whether the misclosure of a thing is to be shared out and can be. */
export function isBalanced(owner: PointOwner): owner is Feature & { closing: LegSpot } {
  return hasClosing(owner) && owner.balance === 'compass' && heldVertex(owner) === null;
}

/**
 * The sides of an outline as measured: those between `points`, then the closing one. `heading` is the direction (rad) in which the
 * line comes to its last point. Null when the closing side needs a direction and there is none.
 */
export function measuredLegs(
  { vertices, closing }: Feature & { closing: LegSpot },
  points: readonly Point[],
  heading: number | null,
): readonly TraverseLeg[] | null {
  const legs = points.slice(1).map((to, i): TraverseLeg => {
    const from = points[i] ?? to;
    const spot = vertices[i + 1]?.spot;
    const azimuth = azimuthBetween(from, to);
    return spot?.by === 'arc'
      ? { kind: 'arc', radius: spot.radius, sweep: spot.sweep, chordAzimuth: azimuth }
      : { kind: 'straight', azimuth, distance: distance(from, to) };
  });
  const last = closingLeg(closing, heading);
  return last === null ? null : [...legs, last];
}

function closingLeg(spot: LegSpot, heading: number | null): TraverseLeg | null {
  switch (spot.by) {
    case 'course':
      return { kind: 'straight', azimuth: spot.azimuth, distance: spot.distance };
    case 'turn':
      return heading === null
        ? null
        : { kind: 'straight', azimuth: normalizeAzimuth(heading + spot.turn), distance: spot.distance };
    case 'arc': {
      const chordAzimuth = spot.chord ?? (heading === null ? null : heading + spot.sweep / 2);
      return chordAzimuth === null
        ? null
        : {
            kind: 'arc',
            radius: spot.radius,
            sweep: spot.sweep,
            chordAzimuth: normalizeAzimuth(chordAzimuth),
          };
    }
  }
}

/** The corners after the first when the misclosure of the sides is shared out by the compass rule. */
export function balancedCorners(first: Point, legs: readonly TraverseLeg[]): readonly Point[] {
  let at = first;
  return compassBalance(legs)
    .slice(0, -1)
    .map((side) => {
      at = { x: at.x + side.x, y: at.y + side.y };
      return at;
    });
}
