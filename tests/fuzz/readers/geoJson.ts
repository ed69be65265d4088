import { jsonMutators } from '../mutate/json';
import { bytesOf } from '../reader';
import { ownFile } from '../soundFiles';
import { incomingReader } from './incoming';

const ring = [
  [-31, 45],
  [-31.001, 45],
  [-31.001, 45.001],
  [-31, 45],
];
const geometries = [
  { type: 'Point', coordinates: [-31, 45, 7.5] },
  {
    type: 'MultiPoint',
    coordinates: [
      [-31, 45],
      [-31.0001, 45],
    ],
  },
  {
    type: 'LineString',
    coordinates: [
      [-31, 45],
      [-31.0001, 45, 2],
    ],
  },
  {
    type: 'MultiLineString',
    coordinates: [
      [
        [-31, 45],
        [-31.0001, 45],
      ],
      ring,
    ],
  },
  { type: 'Polygon', coordinates: [ring, ring] },
  { type: 'MultiPolygon', coordinates: [[ring], [ring, ring]] },
];
const collection = { type: 'GeometryCollection', geometries };
const feature = (geometry: unknown, i: number) => ({
  type: 'Feature',
  id: i,
  properties: { name: `Thing ${i}`, layer: i % 2 === 0 ? 'fence' : null },
  geometry,
});
const small = [
  ...geometries,
  collection,
  feature(geometries[4], 1),
  { type: 'FeatureCollection', features: [...geometries, collection, null].map(feature) },
  {
    type: 'FeatureCollection',
    crs: { type: 'name', properties: { name: 'urn:ogc:def:crs:EPSG::2272' } },
    features: [feature({ type: 'Point', coordinates: [2_700_000, 250_000] }, 1)],
  },
];

export const reader = incomingReader({
  name: 'GeoJSON',
  format: 'geojson',
  seeds: () => [...small.map((value) => bytesOf(JSON.stringify(value))), ownFile('geojson')],
  mutators: jsonMutators,
  count: (text) => thingsIn(parsed(text)),
  numbers: (text) => numbersIn(parsed(text)),
});

const parsed = (text: string): unknown => JSON.parse(text);

/** Things of a GeoJSON value (RFC 7946): one for each point, line and outline and for each hole, and one for what is none of these. */
function thingsIn(value: unknown): number {
  if (!isObject(value)) return 1;
  const { type, features, geometry, geometries: inner, coordinates } = value;
  const parts = (list: unknown, each: (part: unknown) => number) =>
    Array.isArray(list) && list.length > 0 ? list.reduce((sum: number, part) => sum + each(part), 0) : 1;
  const rings = (list: unknown) => (Array.isArray(list) ? Math.max(1, list.length) : 1);
  switch (type) {
    case 'FeatureCollection':
      // one in another is none
      return Array.isArray(features)
        ? features.reduce(
            (sum: number, f) => sum + (isObject(f) && f.type === 'Feature' ? thingsIn(f) : placed(f)),
            0,
          )
        : 1;
    case 'Feature':
      return placed(geometry);
    case 'GeometryCollection':
      return parts(inner, placed);
    case 'MultiPoint':
    case 'MultiLineString':
      return parts(coordinates, () => 1);
    case 'Polygon':
      return rings(coordinates);
    case 'MultiPolygon':
      return parts(coordinates, rings);
    default:
      return 1;
  }
}

/** What stands where a geometry is due. */
function placed(value: unknown): number {
  return isObject(value) && value.type !== 'Feature' && value.type !== 'FeatureCollection'
    ? thingsIn(value)
    : 1;
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function numbersIn(root: unknown): ReadonlySet<number> {
  const found = new Set<number>();
  const ahead = [root];
  for (let one = ahead.pop(); one !== undefined || ahead.length > 0; one = ahead.pop()) {
    if (typeof one === 'number') found.add(one);
    if (typeof one === 'object' && one !== null) for (const inner of Object.values(one)) ahead.push(inner);
  }
  return found;
}
