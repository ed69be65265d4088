import { ok, type Result, ringArea } from '@footmark/geometry';
import type { Derived, EarthPoint, RunsFit, Site } from '@footmark/site';
import type { Words } from '@footmark/words';
import { harmlessName } from '../harmless';
import { type EarthProblem, type EarthThing, mapDegrees, onEarth } from '../things/onEarth';
import { siteThings } from '../things/siteThings';

type Position = readonly [longitude: number, latitude: number];

type Geometry =
  | { readonly type: 'Point'; readonly coordinates: Position }
  | { readonly type: 'LineString'; readonly coordinates: readonly Position[] }
  | { readonly type: 'Polygon'; readonly coordinates: readonly (readonly Position[])[] };

/**
 * A site as GeoJSON (RFC 7946): one feature for each mark, pipe and thing of the yard. Longitude before latitude in degrees of WGS 84 to seven
 * decimals, rings counterclockwise and closed, no `crs`. Properties: `name`, `layer`, `kind` and what is known; lengths in metres.
 */
export function siteGeoJson(
  site: Site,
  derived: Derived,
  fit: RunsFit | null,
  words: Words,
): Result<string, EarthProblem> {
  const things = onEarth(siteThings({ site, derived, fit, words }), derived);
  if (!things.ok) return things;
  const collection = {
    type: 'FeatureCollection',
    name: harmlessName(site.name),
    features: things.value.map((thing) => ({
      type: 'Feature',
      id: thing.id,
      geometry: geometryOf(thing),
      properties: { name: thing.name, layer: thing.layer, ...thing.facts },
    })),
  };
  return ok(`${JSON.stringify(collection, null, 1)}\n`);
}

function geometryOf({ shape, points, places }: EarthThing): Geometry {
  const [first] = places;
  if (shape === 'point' && first !== undefined) return { type: 'Point', coordinates: positionOf(first) };
  if (shape !== 'area') return { type: 'LineString', coordinates: places.map(positionOf) };
  const round = ringArea(points) < 0 ? places.toReversed() : places;
  const ring = round.map(positionOf);
  return { type: 'Polygon', coordinates: [[...ring, ...ring.slice(0, 1)]] };
}

function positionOf({ longitudeDeg, latitudeDeg }: EarthPoint): Position {
  return [mapDegrees(longitudeDeg), mapDegrees(latitudeDeg)];
}
