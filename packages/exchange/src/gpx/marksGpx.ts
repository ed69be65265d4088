import { fail, ok, type Result } from '@footmark/geometry';
import type { Derived, RunsFit, Site } from '@footmark/site';
import type { Words } from '@footmark/words';
import { harmlessName } from '../harmless';
import { type EarthProblem, type EarthThing, mapDegrees, onEarth } from '../things/onEarth';
import { markThings } from '../things/siteThings';
import { element, textElement, xmlDocument } from '../xmlText';

/**
 * The marks as waypoints (GPX 1.1), for a hand-held receiver: `name` is what is painted, `desc` what was seen. Heights are left out: a level of
 * the site counts from a datum of its own.
 */
export function marksGpx(
  site: Site,
  derived: Derived,
  fit: RunsFit | null,
  words: Words,
): Result<string, EarthProblem | 'no-marks'> {
  const marks = markThings({ site, derived, fit, words });
  if (marks.length === 0) return fail('no-marks');
  const things = onEarth(marks, derived);
  if (!things.ok) return things;
  const root = 'gpx xmlns="http://www.topografix.com/GPX/1/1" version="1.1" creator="Footmark"';
  const about = element('metadata', [textElement('name', harmlessName(site.name))]);
  return ok(xmlDocument(element(root, [about, ...things.value.map(waypoint)])));
}

/** The schema's longitudes end before 180°. */
function gpxLongitude(degrees: number): number {
  const longitude = mapDegrees(degrees);
  return longitude === 180 ? -180 : longitude;
}

/** The order of the children is the schema's. */
function waypoint({ name, places, facts }: EarthThing): string {
  const [place] = places;
  const at = `lat="${mapDegrees(place?.latitudeDeg ?? 0)}" lon="${gpxLongitude(place?.longitudeDeg ?? 0)}"`;
  return element(`wpt ${at}`, [
    textElement('name', name),
    ...(typeof facts.note === 'string' ? [textElement('cmt', facts.note)] : []),
    textElement('desc', String(facts.seen ?? '')),
    textElement('type', 'mark'),
  ]);
}
