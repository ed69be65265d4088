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
  return converted(() => {
    const [x, y] = converterAbout(centre).forward([place.longitudeDeg, place.latitudeDeg]);
    return { x: x ?? Number.NaN, y: y ?? Number.NaN };
  });
}

/** The way back from `earthToLocal`; the longitude comes out in [−180, 180]. */
export function localToEarth(centre: EarthPoint, local: Point): Result<EarthPoint, ProjectionProblem> {
  return converted(() => {
    const [longitudeDeg, latitudeDeg] = converterAbout(centre).inverse([local.x, local.y]);
    return { latitudeDeg: latitudeDeg ?? Number.NaN, longitudeDeg: longitudeDeg ?? Number.NaN };
  });
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
