import type { Point } from '@footmark/geometry';
import { locateSigma } from '../locateSigma';
import type { Net } from '../net';
import { pointSigmas } from '../pointSigma';
import { addPlace, type NetReading, netReading, placeOfReading } from '../readingPlace';
import { sondeStation } from '../sondeStation';
import { legOf, legPlace } from '../stray';
import type { Tagged } from '../tagged';

/** Each locate says where the sonde was: along the leg of its pipe, and across it with what the pipe strays there. */
export function* locateEvidence(net: Net): Generator<Tagged> {
  const { site, derived } = net;
  const sigmaOfPoint = pointSigmas(site, derived.points);
  for (const feature of site.features) {
    if (feature.kind !== 'locate' || feature.fields.reading === undefined) continue;
    const reading = netReading(net, feature.fields.reading.reading);
    const at = derived.features.get(feature.id)?.points[0];
    if (reading === null || at === undefined) continue;
    const axes = axesAt(net, reading);
    const stray = net.strays.find((s) => s.locates.includes(feature.id));
    if (axes === null) continue;
    const sigma = locateSigma(
      site,
      feature,
      sigmaOfPoint({ of: feature.id, at: feature.vertices[0]?.id ?? '' }),
    );
    const behind = reading.mark.trace.tail;
    for (const part of ['along', 'across'] as const) {
      const axis = axes[part];
      const strays = part === 'across' ? stray?.unknown : undefined;
      yield {
        tag: { is: 'locate', feature: feature.id, part },
        observation: {
          kind: 'custom',
          id: `locate/${feature.id}`,
          value: at.x * axis.x + at.y * axis.y,
          sigma,
          evaluate: (x) => {
            const place = placeOfReading(reading, x, behind)?.at ?? at;
            return place.x * axis.x + place.y * axis.y + (strays === undefined ? 0 : (x[strays] ?? 0));
          },
          gradient: (x, out) => {
            const place = placeOfReading(reading, x, behind);
            if (place !== null) addPlace(reading, x, place, axis, 1, out);
            if (strays !== undefined) out.add(strays, 1);
          },
        },
      };
    }
  }
}

/** Unit vectors along the drawn leg on which the sonde is computed, with the flow, and to the right of it. */
function axesAt({ derived }: Net, { mark }: NetReading): { along: Point; across: Point } | null {
  const place = sondeStation(derived, mark);
  const on = place === null ? undefined : derived.paths.get(place.path);
  if (place === null || on === undefined) return null;
  const leg = legOf(on, legPlace(on, place.station).leg);
  return leg === null ? null : { along: { x: -leg.right.y, y: leg.right.x }, across: leg.right };
}
