import { add, type Point, subtract } from '@footmark/geometry';
import type { Derived } from '../derive/derive';
import type { FoundPlace } from '../derive/foundPlaces';
import { foundSpot } from '../derive/foundSpot';
import { pipeSizeAt } from '../derive/profileSoundings';
import { planAt } from '../derive/runRoute';
import { sondePlace } from '../derive/sondePlace';
import type { Feature } from '../document/feature';
import type { Site } from '../document/site';
import type { Spot } from '../document/spot';
import { settings } from '../rules/settings';
import { sigmaOf } from '../rules/sigmaOf';
import { type Edit, unknown } from './edit';

/** Whether a find can be weighed with runs and lines: it was laid bare at a mark that has a place, and is not weighed yet. */
export function canWeigh(site: Site, { record, at, sought }: FoundPlace): boolean {
  return (
    record.about.is === 'mark' &&
    record.state === 'found' &&
    at !== null &&
    sought !== null &&
    !site.features.some((f) => f.id === record.id)
  );
}

/**
 * Makes a find evidence of the fit: a locate of its id, of a pipe that was seen, at the mark's reading, with its depth to the top. A
 * locate is where the sonde was, so a find at the lens lies a head's length along the pipe from it. Throws for a find that cannot be
 * weighed: ask `canWeigh`. `derived`: of this site.
 */
export const weighFind: Edit<{ id: string; name: string; derived: Derived }> = (
  site,
  { id, name, derived },
) => {
  const one = derived.found.find(({ record }) => record.id === id) ?? unknown('find', id);
  const { record, at, sought } = one;
  if (!canWeigh(site, one) || record.about.is !== 'mark' || at === null || sought === null) {
    throw new RangeError(`weighFind: ${id} was not laid bare at a mark with a place, or is weighed already`);
  }
  const { run, reading } = record.about;
  const depth = depthToTop(one, derived);
  const locate: Feature = {
    id,
    kind: 'locate',
    name,
    vertices: [{ id: 'a', spot: spotOf(site, derived, one, at, behindLens(derived, reading)) }],
    fields: {
      reading: { run, reading },
      method: 'exposed',
      ...(depth === null ? {} : { depth }),
      // an offset from paint is as sure as the eye on the pipe, the paint and the offset together
      ...(record.where?.by === 'paint'
        ? { sigma: Math.hypot(sigmaOf(site, 'exposed'), settings.paintOffsetSigma.value) }
        : {}),
    },
  };
  return { ...site, features: [...site.features, locate] };
};

/** From the lens of a reading to its sonde, on the plan. */
function behindLens(derived: Derived, reading: string): Point {
  const mark = derived.marks.find((m) => m.reading.id === reading);
  const sonde = mark === undefined ? null : sondePlace(derived, mark);
  const at = sonde === null ? null : planAt(derived.paths, sonde);
  return mark?.place && at !== null ? subtract(at.point, mark.place.at) : { x: 0, y: 0 };
}

/** Tapes stay what they are while the sonde is at the lens; an offset from paint hangs on what the paint was taped from. */
function spotOf(
  site: Site,
  { points }: Derived,
  { record: { where, given } }: FoundPlace,
  at: Point,
  shift: Point,
): Spot {
  const stays = shift.x === 0 && shift.y === 0;
  if (stays && (where?.by === 'tapes' || where?.by === 'coordinates')) return where;
  const place = add(at, shift);
  return where?.by === 'coordinates'
    ? { ...where, x: place.x, y: place.y }
    : foundSpot(site, points, given, place);
}

function depthToTop({ record: { depth }, sought }: FoundPlace, { paths }: Derived): number | null {
  if (depth === undefined || sought === null) return null;
  if (depth.to === 'top') return depth.depth;
  const on = paths.get(sought.path);
  if (on === undefined) return null;
  const { diameter, wall } = pipeSizeAt(on.path.stretches, sought.station);
  return Math.max(0, depth.depth - diameter - wall);
}
