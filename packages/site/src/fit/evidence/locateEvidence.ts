import { addMix, mixAt } from '../chain';
import { locateSigma } from '../locateSigma';
import type { Net } from '../net';
import { pointSigmas } from '../pointSigma';
import { addPlace, netReading, placeOfReading } from '../readingPlace';
import { legOf } from '../stray';
import type { Tagged } from '../tagged';
import { pieceAt } from '../way';

/**
 * Each locate says where the sonde was: how far along the leg of its pipe, which the count of its reading leads to, and how far to the side
 * the pipe lies there.
 */
export function* locateEvidence(net: Net): Generator<Tagged> {
  const { site, derived } = net;
  const sigmaOfPoint = pointSigmas(site, derived.points);
  for (const feature of site.features) {
    if (feature.kind !== 'locate' || feature.fields.reading === undefined) continue;
    const reading = netReading(net, feature.fields.reading.reading);
    const at = derived.features.get(feature.id)?.points[0];
    const stray = net.strays.find((s) => s.locates.includes(feature.id));
    const on = derived.paths.get(stray?.path ?? '');
    const chain = net.chains.get(stray?.path ?? '');
    if (reading === null || at === undefined || stray === undefined || !on || !chain) continue;
    const place = stray.leg + stray.share;
    const leg = legOf(on, stray.leg);
    const here = chain.mixes[chain.places.indexOf(place, stray.leg)];
    const piece = pieceAt(reading.on.way, stray);
    if (leg === null || here === undefined || piece === undefined) continue;
    const vertex = feature.vertices[0]?.id ?? '';
    const sigma = locateSigma(site, feature, sigmaOfPoint({ of: feature.id, at: vertex }));
    const behind = reading.mark.trace.tail;
    const right = leg.right;
    const ahead = { x: -right.y, y: right.x };
    const common = { kind: 'custom', id: `locate/${feature.id}`, sigma } as const;
    yield {
      tag: { is: 'locate', feature: feature.id, part: 'along' },
      observation: {
        ...common,
        value: at.x * ahead.x + at.y * ahead.y,
        evaluate: (x) => {
          const { x: px, y: py } = placeOfReading(reading, x, behind, piece)?.at ?? at;
          return px * ahead.x + py * ahead.y;
        },
        gradient: (x, out) => {
          const found = placeOfReading(reading, x, behind, piece);
          if (found !== null) addPlace(reading, x, found, ahead, 1, out);
        },
      },
    };
    yield {
      tag: { is: 'locate', feature: feature.id, part: 'across' },
      observation: {
        ...common,
        value: at.x * right.x + at.y * right.y,
        evaluate: (x) => {
          const { x: px, y: py } = mixAt(here, x);
          return px * right.x + py * right.y;
        },
        gradient: (_, out) => addMix(here, right, 1, out),
      },
    };
  }
}
