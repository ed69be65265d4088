import { distance, type Point } from '@footmark/geometry';
import type { Site } from '../document/site';
import type { Ref, Tape } from '../document/spot';
import { faceRadiusOf } from './faceRadius';
import type { Side } from './side';
import { placeOfManyTapes, placeOfTwoTapes, type TapeCircle } from './tapedPlace';

type Taped = { readonly tapes: readonly Tape[]; readonly side: Side };

/** As far (m) as two tapes may miss each other by the crew's pull and still be said to meet, where they come nearest. */
const ALMOST_M = 0.05;

/**
 * Where tapes put a place that is no point of the site. `placeOf` tells where a reference is. Null when one of them is gone, or the
 * tapes do not meet.
 */
export function placeOfTapes(
  site: Site,
  { tapes, side }: Taped,
  placeOf: (ref: Ref) => Point | undefined,
): Point | null {
  const circles = tapes.flatMap(({ from, distance: pulled }): TapeCircle[] => {
    const centre = placeOf(from);
    const feature = site.features.find((f) => f.id === from.of);
    const face = feature === undefined ? 0 : faceRadiusOf(feature);
    return centre === undefined ? [] : [{ centre, radius: pulled + face }];
  });
  const [a, b] = circles;
  if (circles.length < tapes.length || a === undefined || b === undefined) return null;
  const silent = { say: () => {}, names: () => '' };
  const place =
    circles.length === 2
      ? placeOfTwoTapes([a, b], side, silent)
      : placeOfManyTapes(circles, side, site.tape.sigma, silent);
  const misses = circles.map(({ centre, radius }) => Math.abs(distance(centre, place.at) - radius));
  return place.measured || Math.max(...misses) <= ALMOST_M ? place.at : null;
}
