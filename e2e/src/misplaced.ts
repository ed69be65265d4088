import type { Site } from '../../packages/site/src/index';
import type { MeasuredThing } from './measuredYard';
import type { Place } from './Plan';
import { placesOf, pointName } from './plane';
import { placeOf } from './siteFile';

/** A millimetre: far finer than any tape, far coarser than rounding. */
const TO_M = 0.001;

/** The points of a site that lie further than a millimetre from where a list has them, by name and how far. */
export function misplaced(site: Site, things: readonly MeasuredThing[]): readonly string[] {
  const expected = placesOf(things);
  return things.flatMap((thing) =>
    thing.points.flatMap((_, i) => {
      const name = pointName(thing, i);
      const at = placeOf(site, thing.name, 'abcdefgh'.charAt(i));
      const listed = expected.get(name) as Place; // the list has all of its points
      const off = Math.hypot(at.x - listed.x, at.y - listed.y);
      return off < TO_M ? [] : [`${name} is ${off.toFixed(4)} m off`];
    }),
  );
}
