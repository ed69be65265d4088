import { fail, ok } from '@footmark/geometry';
import { type Collector, collector } from '../collector';
import type { IncomingPoint, IncomingSays, IncomingSteps } from '../incoming';
import { MOST_CHARACTERS, MOST_DEPTH, STEP } from '../incomingLimits';

type Json = Readonly<Record<string, unknown>>;

/** What is handed down to a geometry from the feature that has it. */
type Owner = { readonly name: string; readonly layer: string };

/** Properties that people keep a name or a layer in, first found first taken (common practice, no source). */
const NAME_KEYS = ['name', 'Name', 'NAME', 'title', 'label', 'id'];
const LAYER_KEYS = ['layer', 'Layer', 'LAYER', 'kind', 'type'];

/** The systems that an old `crs` member may name and mean degrees of WGS 84, longitude first (GeoJSON 2008; RFC 7946 has none). */
const EARTH_NAMES = /(CRS84|EPSG:{1,2}4326)$/i;

/**
 * Reads GeoJSON (RFC 7946): a collection, a feature or a geometry, of all types; holes and heights of lines are left out. The text is parsed in one go,
 * a tenth of a second for 10 MB, and walked in steps.
 */
export function* readGeoJson(text: string): IncomingSteps {
  if (text.length > MOST_CHARACTERS)
    return fail('too-large', { characters: text.length, most: MOST_CHARACTERS });
  let root: unknown;
  try {
    root = JSON.parse(text);
  } catch {
    return fail('not-json');
  }
  if (!isObject(root) || typeof root.type !== 'string') return fail('not-geojson');
  const found = collector();
  const features: readonly unknown[] =
    root.type === 'FeatureCollection' ? (Array.isArray(root.features) ? root.features : []) : [root];
  if (root.type === 'FeatureCollection' && !Array.isArray(root.features)) return fail('not-geojson');
  for (const [i, feature] of features.entries()) {
    if (i % STEP === 0) yield i / features.length;
    const walked = addFeature(feature, found);
    if (walked === 'too-deep') return fail('too-deep', { most: MOST_DEPTH });
    if (found.failure !== null) return found.failure;
  }
  if (found.things.length === 0) return fail('nothing-in-it');
  const { things, notes } = found;
  return ok({ format: 'geojson', says: saysOf(root, things), things, rows: [], notes });
}

/** Degrees, unless the file names another system or has numbers that are none. */
function saysOf(root: Json, things: Collector['things']): IncomingSays {
  const crs = isObject(root.crs) && isObject(root.crs.properties) ? root.crs.properties.name : undefined;
  if (typeof crs === 'string' && !EARTH_NAMES.test(crs))
    return { coordinates: { is: 'named', name: crs.slice(0, 200) }, unit: null, order: 'EN' };
  // degrees the wrong way round still look like degrees: where they would lie tells
  const degrees = things.every(({ points }) =>
    points.every((p) => Math.abs(p.first) <= 180 && Math.abs(p.second) <= 180),
  );
  return { coordinates: degrees ? { is: 'earth' } : null, unit: null, order: 'EN' };
}

function addFeature(feature: unknown, found: Collector): 'too-deep' | undefined {
  if (!isObject(feature)) {
    found.leaveOut('kinds-left-out');
    return undefined;
  }
  if (feature.type !== 'Feature') return addGeometry(feature, { name: '', layer: '' }, 0, found);
  const properties = isObject(feature.properties) ? feature.properties : {};
  const owner = { name: textOf(properties, NAME_KEYS), layer: textOf(properties, LAYER_KEYS) };
  if (feature.geometry === null) {
    found.leaveOut('kinds-left-out'); // a feature without a place is allowed
    return undefined;
  }
  return addGeometry(feature.geometry, owner, 0, found);
}

function addGeometry(
  geometry: unknown,
  owner: Owner,
  depth: number,
  found: Collector,
): 'too-deep' | undefined {
  if (depth > MOST_DEPTH) return 'too-deep';
  if (!isObject(geometry)) {
    found.leaveOut('kinds-left-out');
    return undefined;
  }
  const { type, coordinates } = geometry;
  switch (type) {
    case 'Point':
      found.add({ ...owner, shape: 'point', points: [pointOf(coordinates)] });
      return undefined;
    case 'MultiPoint':
      for (const at of partsOf(coordinates, found)) {
        if (!found.add({ ...owner, shape: 'point', points: [pointOf(at)] })) return undefined;
      }
      return undefined;
    case 'LineString':
      addLine(coordinates, owner, found);
      return undefined;
    case 'MultiLineString':
      for (const line of partsOf(coordinates, found)) if (!addLine(line, owner, found)) return undefined;
      return undefined;
    case 'Polygon':
      addArea(coordinates, owner, found);
      return undefined;
    case 'MultiPolygon':
      for (const area of partsOf(coordinates, found)) if (!addArea(area, owner, found)) return undefined;
      return undefined;
    case 'GeometryCollection':
      for (const inner of partsOf(geometry.geometries, found)) {
        const walked = addGeometry(inner, owner, depth + 1, found);
        if (walked !== undefined || found.failure !== null) return walked;
      }
      return undefined;
    default:
      found.leaveOut('kinds-left-out');
      return undefined;
  }
}

function addLine(coordinates: unknown, owner: Owner, found: Collector): boolean {
  return found.add({ ...owner, shape: 'line', points: listOf(coordinates).map(pointOf) });
}

function addArea(coordinates: unknown, owner: Owner, found: Collector): boolean {
  const [outer, ...holes] = listOf(coordinates);
  found.leaveOut('holes-left-out', holes.length);
  return found.add({ ...owner, shape: 'area', points: listOf(outer).map(pointOf) });
}

const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

/** The parts of a geometry of several; one without any counts as a thing without a place (RFC 7946, 3.1: as `null`). */
function partsOf(value: unknown, found: Collector): readonly unknown[] {
  const parts = listOf(value);
  if (parts.length === 0) found.leaveOut('kinds-left-out');
  return parts;
}

/** What is no number becomes NaN, which the collector counts. */
function pointOf(position: unknown): IncomingPoint {
  const [first, second, height] = listOf(position);
  const number = (value: unknown) => (typeof value === 'number' ? value : Number.NaN);
  const z = number(height); // JSON's 1e999 is a number, and infinite
  return { first: number(first), second: number(second), height: Number.isFinite(z) ? z : null };
}

function textOf(properties: Json, keys: readonly string[]): string {
  for (const key of keys) {
    const value = Object.hasOwn(properties, key) ? properties[key] : undefined;
    if (typeof value === 'string' && value !== '') return value;
    if (typeof value === 'number') return String(value);
  }
  return '';
}

function isObject(value: unknown): value is Json {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
