import { azimuthBetween, distance, midpoint, type Point, ringArea } from '@footmark/geometry';
import type { DerivedFeature, Site } from '@footmark/site';
import type { Label } from '../label';
import type { LineType } from '../lineTypes';
import { NAME_PRIORITY, PRIORITY, TEXT_MM } from '../textStyle';
import { courseText, lengthText } from './dimensionText';

/** Legs shorter than this (m) are jogs that nobody dimensions on a plan. */
const SHORTEST_LEG_M = 0.3;

/** Two legs with one length whose middles are this near on paper are one wall that two things share. */
const SAME_LEG_MM = 3;

/** What ornaments take up beside a line, paper mm. */
const ORNAMENT_MM = 1.1;

type Leg = Readonly<{ from: Point; to: Point; index: number; measured: boolean; end: string }>;

function legsOf({ points, measured, feature, spec }: DerivedFeature): readonly Leg[] {
  const count = spec.shape === 'area' ? points.length : points.length - 1;
  return points.slice(0, count).flatMap((from, index) => {
    const next = (index + 1) % points.length;
    const to = points[next];
    if (to === undefined) return [];
    return { from, to, index, measured: measured[next] ?? false, end: feature.vertices[next]?.id ?? '' };
  });
}

/** Lengths along the legs, with bearings on a boundary's. A tap on one is about the vertex at the leg's end. */
export function legDimensions(of: DerivedFeature, type: LineType, units: Site['units']): readonly Label[] {
  if (type.dimension === undefined) return [];
  const course = type.dimension === 'course';
  const area = of.spec.shape === 'area' ? ringArea(of.points) : 0;
  return legsOf(of).flatMap((leg): readonly Label[] => {
    const span = distance(leg.from, leg.to);
    if (span < SHORTEST_LEG_M) return [];
    const azimuth = azimuthBetween(leg.from, leg.to);
    const text = course
      ? courseText(units, azimuth, span, leg.measured)
      : lengthText(units, span, leg.measured);
    return [
      {
        id: `${of.feature.id}/leg/${leg.end}`,
        text,
        at: midpoint(leg.from, leg.to),
        height: TEXT_MM.small,
        ink: course ? 'land' : leg.measured ? 'ink' : 'assumed',
        weight: 'regular',
        priority: course ? PRIORITY.course : PRIORITY.wall,
        seat: 'along',
        // outside an outline
        along: { azimuth, span, ...(area === 0 ? {} : { side: area > 0 ? 'right' : 'left' }) },
        clear: 0,
        whenCrowded: 'leave-out',
        repeat: { group: `leg/${text}`, apartMm: SAME_LEG_MM },
        target: { kind: 'feature', id: of.feature.id, vertex: leg.end },
      },
    ];
  });
}

/** The name of a line, along its longest leg. */
export function lineName(of: DerivedFeature, text: string, type: LineType): readonly Label[] {
  const legs = legsOf(of).map((leg) => ({ ...leg, span: distance(leg.from, leg.to) }));
  const longest = legs.reduce<(typeof legs)[number] | null>(
    (best, leg) => (best === null || leg.span > best.span ? leg : best),
    null,
  );
  if (text === '' || longest === null) return [];
  return [
    {
      id: `${of.feature.id}/name`,
      text,
      at: midpoint(longest.from, longest.to),
      height: TEXT_MM.small,
      ink: type.measured.ink,
      weight: 'regular',
      priority: NAME_PRIORITY[of.spec.layer],
      seat: 'along',
      along: { azimuth: azimuthBetween(longest.from, longest.to), span: longest.span },
      clear: type.pattern === undefined ? 0 : ORNAMENT_MM,
      whenCrowded: 'leave-out',
      target: { kind: 'feature', id: of.feature.id },
    },
  ];
}
