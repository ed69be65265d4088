import type { DerivedFeature, Feature, Site } from '@footmark/site';
import type { LayerBuilder } from '../layerBuilder';
import { lineLetters } from '../lineLetters';
import { type LineType, lineTypes } from '../lineTypes';
import type { Stroke } from '../primitive';
import { services } from '../services';
import { NAME_PRIORITY, TEXT_MM } from '../textStyle';
import { legDimensions, lineName } from './legLabels';
import { legRuns } from './legRuns';
import { nameplacesOf } from './nameplaces';

/** Draws a line or an area: fills below, each leg with the pen of how it is known, ornaments, letters, name, dimensions. */
export function drawOutline(
  of: DerivedFeature,
  units: Site['units'],
  dimensions: boolean,
  into: LayerBuilder,
): void {
  const { feature, spec, points, outline } = of;
  const closed = spec.shape === 'area';
  const target = { kind: 'feature', id: feature.id } as const;
  const type = lineTypeOf(feature, spec.lineType);
  if (closed) {
    for (const fill of type.fills ?? []) {
      into.add(spec.layer, { kind: 'line', points: outline, closed, fill, target });
    }
  }
  for (const run of legRuns(outline, of.outlineMeasured, closed)) {
    const stroke: Stroke = run.measured ? type.measured : type.assumed;
    const onRun = { points: run.points, closed: run.closed, stroke, target };
    if (type.pattern !== undefined) {
      const { name: pattern, spacing } = type.pattern;
      if (pattern === 'flow') into.add(spec.layer, { kind: 'line', ...onRun });
      into.add(spec.layer, { kind: 'pattern', pattern, spacing, ...onRun });
    } else into.add(spec.layer, { kind: 'line', ...onRun });
  }
  if (type.letters !== undefined) {
    const { letters } = type;
    const { ink } = type.measured;
    into.label(spec.layer, ...lineLetters({ id: feature.id, points, letters, ink, target }));
  }
  nameOutline(of, type, into);
  if (dimensions) into.label(spec.layer, ...legDimensions(of, type, units));
}

/** The kind's own line type; a service takes the ink and letters of what it carries. Throws for a type not in the table. */
function lineTypeOf(feature: Feature, name: string | undefined): LineType {
  const type = lineTypes[name ?? ''];
  if (type === undefined) throw new RangeError(`${feature.kind} has no line type ${name}`);
  if (feature.kind !== 'service' || feature.fields.carries === undefined) return type;
  const { ink, letters } = services[feature.fields.carries];
  return { ...type, measured: { ...type.measured, ink }, assumed: { ...type.assumed, ink }, letters };
}

function nameOutline(of: DerivedFeature, type: LineType, into: LayerBuilder): void {
  const { feature, spec, outline } = of;
  if (spec.shape === 'line') {
    into.label(spec.layer, ...lineName(of, feature.name, type));
    return;
  }
  // a boundary's name belongs to the whole yard and is in the sheet's title
  if (feature.name === '' || spec.lineType === 'boundary') return;
  const main = spec.lineType === 'wall';
  const [at, ...elsewhere] = nameplacesOf(feature, outline);
  into.label(spec.layer, {
    id: `${feature.id}/name`,
    text: feature.name,
    at,
    elsewhere,
    height: main ? TEXT_MM.main : TEXT_MM.small,
    ink: type.measured.ink === 'pavement' ? 'faint' : type.measured.ink,
    weight: main ? 'bold' : 'regular',
    // a porch after the house that it belongs to
    priority: NAME_PRIORITY[spec.layer] - (main ? 0 : 10),
    seat: 'centre',
    clear: 0,
    whenCrowded: 'leave-out',
    target: { kind: 'feature', id: feature.id },
  });
}
