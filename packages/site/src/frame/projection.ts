import { fail, ok, type Point, type Result } from '@footmark/geometry';
import type { Converter } from 'proj4';
import type { Site } from '../document/site';

// The one file that calls proj4, which throws texts and gives NaN in silence: here both become results.

/** A quarter of all that a first screen needs, and for sites with coordinates only: it comes by `loadProjection`. */
let proj4: Awaited<ReturnType<typeof bring>> | undefined;

const bring = async () => (await import('proj4')).default;

/** Brings the library. Before it has come nothing here may be called, nor `derive` for a site with control points. */
export async function loadProjection(): Promise<void> {
  proj4 ??= await bring();
}

/** Whether what follows from a site asks for the library. */
export function needsProjection({ frame }: Pick<Site, 'frame'>): boolean {
  return frame.control.length > 0;
}

function library(): NonNullable<typeof proj4> {
  if (proj4 === undefined) throw new Error('loadProjection comes before anything with coordinates');
  return proj4;
}

/** A place on the earth: degrees of WGS 84, north and east positive. */
export type EarthPoint = { readonly latitudeDeg: number; readonly longitudeDeg: number };

export type ProjectionProblem = 'off-the-map';

/**
 * The transverse Mercator projection of WGS 84 about `centre` with scale 1 on its meridian (EPSG method 9807): metres east (x) and north
 * (y) of the centre. Within 1 km of it lengths are true to 1e-8 of themselves and directions to 0.01° × tan(latitude).
 */
export function earthToLocal(centre: EarthPoint, place: EarthPoint): Result<Point, ProjectionProblem> {
  return converted(() => planeOf(converterAbout(centre).forward([place.longitudeDeg, place.latitudeDeg])));
}

/** The way back from `earthToLocal`; the longitude comes out in [−180, 180]. */
export function localToEarth(centre: EarthPoint, local: Point): Result<EarthPoint, ProjectionProblem> {
  return converted(() => earthOf(converterAbout(centre).inverse([local.x, local.y])));
}

/** Reading a definition takes longer than a hundred points, and one site asks for one. */
let last: { readonly definition: string; readonly converter: Converter } | null = null;

function converterAbout({ latitudeDeg, longitudeDeg }: EarthPoint): Converter {
  const definition = `+proj=tmerc +lat_0=${latitudeDeg} +lon_0=${longitudeDeg} +k=1 +x_0=0 +y_0=0 +datum=WGS84 +units=m +no_defs`;
  if (last?.definition === definition) return last.converter;
  const converter = library()(definition);
  last = { definition, converter };
  return converter;
}

/** Why a definition of a map projection cannot be used. */
export type DefinitionProblem =
  | 'definition-too-long'
  | 'not-a-definition' // neither a PROJ string nor WKT, or one that cannot be read
  | 'not-projected' // degrees or a globe, no plane
  | 'needs-shift-grid' // its datum is reached through a file that is not here
  | 'datum-not-given'; // an ellipsoid that is not that of WGS 84 and no way between the two: up to hundreds of metres off

/** A projection as its definition gives it. Coordinates are in its own unit, easting (x) and northing (y), whatever order it lists. */
export type MapProjection = {
  readonly metresPerUnit: number;
  /** `as-wgs84`: the datum is taken for WGS 84, which NAD 83 and others are to 1–2 m; `shifted` by the definition's own parameters. */
  readonly datum: 'as-wgs84' | 'shifted';
  fromEarth(place: EarthPoint): Result<Point, ProjectionProblem>;
  toEarth(at: Point): Result<EarthPoint, ProjectionProblem>;
  /** The projection alone, on its own ellipsoid: what scale and convergence are taken from. */
  readonly own: {
    readonly semiMajorM: number;
    readonly eccentricitySquared: number;
    /** Radians to metres. */
    project(geodetic: Geodetic): Result<Point, ProjectionProblem>;
    /** Metres to radians. */
    unproject(at: Point): Result<Geodetic, ProjectionProblem>;
  };
};

/** Latitude and longitude (rad) on an ellipsoid that need not be that of WGS 84. */
type Geodetic = { readonly latitude: number; readonly longitude: number };

/** The longest WKT in the register is a fifth of it. */
const MOST_DEFINITION_CHARACTERS = 20_000;

/** What PROJ takes where a string is silent, and proj4 takes for no number in some projections; what stands later wins. */
const PROJ_DEFAULTS = '+lat_0=0 +lon_0=0 +x_0=0 +y_0=0';

/** proj4's numbers for how a datum leads to WGS 84. */
const DATUM_BY_GRID = 3;
const DATUM_AS_WGS84 = 4;
const DATUM_NOT_GIVEN = 5;

/** Semi-major axis (m) of WGS 84 and of GRS 80, and of the sphere of web maps. */
const SEMI_MAJOR_M = 6_378_137;

/** Reads a PROJ string (`+proj=…`) or WKT. Names and codes are no definitions here. */
export function mapProjection(definition: string): Result<MapProjection, DefinitionProblem> {
  const text = definition.trim();
  if (text.length > MOST_DEFINITION_CHARACTERS) return fail('definition-too-long');
  if (!text.startsWith('+') && !text.includes('[')) return fail('not-a-definition');
  const { Proj } = library(); // that it has not come yet is no fault of the definition
  try {
    const own = new Proj(text.startsWith('+') ? `${PROJ_DEFAULTS} ${text}` : text);
    const unit: unknown = Reflect.get(own, 'to_meter'); // left out of its types
    const metresPerUnit = unit === undefined ? 1 : Number(unit);
    const kind: unknown = Reflect.get(own, 'projName');
    if (kind === 'longlat' || kind === 'geocent' || kind === 'identity') return fail('not-projected');
    const by = own.datum.datum_type;
    if (by === DATUM_BY_GRID) return fail('needs-shift-grid');
    if (by === DATUM_NOT_GIVEN && own.a !== SEMI_MAJOR_M) return fail('datum-not-given');
    if (!(metresPerUnit > 0) || !(own.a > 0) || !(own.es >= 0 && own.es < 1)) return fail('not-a-definition');
    return ok(projectionOf(own, metresPerUnit));
  } catch {
    return fail('not-a-definition');
  }
}

type Projected = InstanceType<NonNullable<typeof proj4>['Proj']>;

function projectionOf(own: Projected, metresPerUnit: number): MapProjection {
  const converter = library()(own);
  return {
    metresPerUnit,
    datum: own.datum.datum_type >= DATUM_AS_WGS84 ? 'as-wgs84' : 'shifted',
    fromEarth: ({ longitudeDeg, latitudeDeg }) =>
      converted(() => planeOf(converter.forward([longitudeDeg, latitudeDeg]))),
    toEarth: ({ x, y }) => converted(() => earthOf(converter.inverse([x, y]))),
    own: {
      semiMajorM: own.a,
      eccentricitySquared: own.es,
      project: ({ latitude, longitude }) =>
        converted(() => {
          const { x, y } = own.forward({ x: longitude, y: latitude });
          return { x, y };
        }),
      unproject: (at) =>
        converted(() => {
          const { x, y } = own.inverse({ x: at.x, y: at.y });
          return { longitude: x, latitude: y };
        }),
    },
  };
}

function planeOf([x, y]: readonly number[]): Point {
  return { x: x ?? Number.NaN, y: y ?? Number.NaN };
}

function earthOf([longitudeDeg, latitudeDeg]: readonly number[]): EarthPoint {
  return { latitudeDeg: latitudeDeg ?? Number.NaN, longitudeDeg: longitudeDeg ?? Number.NaN };
}

function converted<T extends Readonly<Record<string, number>>>(
  compute: () => T,
): Result<T, ProjectionProblem> {
  library();
  try {
    const value = compute();
    return Object.values(value).every(Number.isFinite) ? ok(value) : fail('off-the-map');
  } catch {
    return fail('off-the-map');
  }
}
