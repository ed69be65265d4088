import { type Point, pointAtAzimuth } from '@footmark/geometry';
import type { FeatureOf } from '@footmark/site';
import type { LayerBuilder } from '../layerBuilder';
import { PEN } from '../lineTypes';
import { crownOutline, seedOf } from '../symbols/crown';

/** Width (m) of a lobe of a crown at true size. */
const LOBE_M = 1.3;
const CROWN_TINT = 0.09;
/** Where in the crown a name may stand, as a share of its radius. */
const NAME_SHARE = 0.55;
const NAME_AZIMUTHS: readonly number[] = [90, 270, 180, 0, 135, 225, 45, 315];
const SPREAD_DASH: readonly number[] = [1.4, 1.2];

/**
 * Draws a tree: the trunk at true size and, within the circle of its spread, a crown by hand; a trunk or a crown that was not
 * given at a small paper size.
 */
export function drawTree(tree: FeatureOf<'tree'>, at: Point, measured: boolean, into: LayerBuilder): void {
  const target = { kind: 'feature', id: tree.id } as const;
  const { trunkDiameter, crownSpread } = tree.fields;
  const upright = { kind: 'symbol', at, azimuth: 0, target } as const;
  if (crownSpread === undefined || crownSpread === 0) {
    into.add('trees', { ...upright, symbol: 'tree', stroke: { ink: 'plant', weight: PEN.fine } });
  } else {
    const radius = crownSpread / 2;
    into.add(
      'trees',
      {
        kind: 'line',
        points: crownOutline(at, radius, LOBE_M, seedOf(tree.id)),
        closed: true,
        stroke: { ink: 'plant', weight: PEN.fine },
        fill: { ink: 'plant', opacity: CROWN_TINT },
        target,
      },
      {
        kind: 'circle',
        centre: at,
        radius,
        stroke: { ink: 'plant', weight: PEN.hair, dash: SPREAD_DASH },
        target,
      },
    );
  }
  if (trunkDiameter === undefined) {
    into.add('trees', { ...upright, symbol: 'trunk', stroke: { ink: 'plant', weight: PEN.fine } });
    return;
  }
  into.add('trees', {
    kind: 'circle',
    centre: at,
    radius: trunkDiameter / 2,
    stroke: {
      ink: 'plant',
      weight: PEN.medium,
      ...(measured ? {} : { dash: [0.9, 0.6] }),
    },
    fill: { ink: 'plant', opacity: 0.45 },
    target,
  });
}

/** Places for the tree's name under its crown, none when no spread was given. */
export function placesInCrown({ fields }: FeatureOf<'tree'>, at: Point): readonly Point[] {
  const radius = (fields.crownSpread ?? 0) / 2;
  if (radius === 0) return [];
  return NAME_AZIMUTHS.map((deg) => pointAtAzimuth(at, (deg * Math.PI) / 180, NAME_SHARE * radius));
}
