import { viewOf } from './bytes';

/**
 * Where a photo was taken, as its camera wrote it: latitude and longitude in degrees, minutes and seconds, each a fraction of whole numbers, and the
 * letters of their hemispheres.
 */
export type PlaceTaken = {
  readonly latitude: { readonly letter: 'N' | 'S'; readonly parts: Parts };
  readonly longitude: { readonly letter: 'E' | 'W'; readonly parts: Parts };
};

/** Numerators and denominators in turn: degrees, minutes, seconds. */
type Parts = readonly number[];

const [ORIENTATION, GPS] = [0x0112, 0x8825];
const [LATITUDE_REF, LATITUDE, LONGITUDE_REF, LONGITUDE] = [1, 2, 3, 4];
const [ASCII, SHORT, LONG, RATIONAL] = [2, 3, 4, 5];
const [LITTLE_ENDIAN, BIG_ENDIAN] = [0x4949, 0x4d4d];
const HEAD = Uint8Array.from('Exif\0\0', (c) => c.charCodeAt(0));

/**
 * The place in the data of a JPEG's APP1 segment; null where it has none that can be read. Source: Exif 2.32, 4.5.4 and 4.6.6 (from memory; held by the
 * tests to a reader that others wrote).
 */
export function placeInExif(data: Uint8Array): PlaceTaken | null {
  const tiff = tiffIn(data);
  const pointer = tiff?.entries.get(GPS);
  if (tiff === null || pointer === undefined) return null;
  const { view, little } = tiff;
  const gps = entriesAt(view, view.getUint32(pointer, little), little);
  if (gps === null) return null;
  const letterOf = (tag: number) => {
    const at = gps.get(tag);
    return at === undefined ? '' : String.fromCharCode(view.getUint8(at));
  };
  const [north, east] = [letterOf(LATITUDE_REF), letterOf(LONGITUDE_REF)];
  const latitude = partsAt(view, gps.get(LATITUDE), little);
  const longitude = partsAt(view, gps.get(LONGITUDE), little);
  if (latitude === null || longitude === null) return null;
  if ((north !== 'N' && north !== 'S') || (east !== 'E' && east !== 'W')) return null;
  return { latitude: { letter: north, parts: latitude }, longitude: { letter: east, parts: longitude } };
}

/** The orientation, 1 to 8, in the data of a JPEG's APP1 segment; null where it gives none. */
export function orientationInExif(data: Uint8Array): number | null {
  const tiff = tiffIn(data);
  const at = tiff?.entries.get(ORIENTATION);
  if (tiff === null || at === undefined) return null;
  const value = tiff.view.getUint16(at, tiff.little);
  return value >= 1 && value <= 8 ? value : null;
}

/** The TIFF in the data of an APP1 segment with Exif, and the entries of its first directory; null where there is none. */
function tiffIn(data: Uint8Array) {
  if (data.length < HEAD.length + 8 || HEAD.some((byte, i) => data[i] !== byte)) return null;
  const view = viewOf(data.subarray(HEAD.length));
  const order = view.getUint16(0);
  if (order !== LITTLE_ENDIAN && order !== BIG_ENDIAN) return null;
  const little = order === LITTLE_ENDIAN;
  const entries = entriesAt(view, view.getUint32(4, little), little);
  return entries === null ? null : { view, little, entries };
}

/** By tag, where the value of each entry of a directory stands, or its offset; null where it lies outside. */
function entriesAt(view: DataView, at: number, little: boolean): ReadonlyMap<number, number> | null {
  if (at + 2 > view.byteLength) return null;
  const count = view.getUint16(at, little);
  if (at + 2 + 12 * count > view.byteLength) return null;
  return new Map(
    Array.from({ length: count }, (_, i): [number, number] => {
      const entry = at + 2 + 12 * i;
      return [view.getUint16(entry, little), entry + 8];
    }),
  );
}

function partsAt(view: DataView, value: number | undefined, little: boolean): Parts | null {
  if (value === undefined) return null;
  const at = view.getUint32(value, little);
  if (at + 24 > view.byteLength) return null;
  return Array.from({ length: 6 }, (_, i) => view.getUint32(at + 4 * i, little));
}

/** A whole APP1 segment with the orientation (1 to 8), where the photo was taken if that is to be told, and nothing else. */
export function exifSegment(orientation: number, place: PlaceTaken | null): Uint8Array {
  const entries = place === null ? 1 : 2;
  const gpsAt = 8 + 2 + 12 * entries + 4;
  const partsFrom = gpsAt + 2 + 12 * 4 + 4;
  const tiffLength = place === null ? gpsAt : partsFrom + 48;
  const length = 2 + HEAD.length + tiffLength;
  const segment = new Uint8Array(2 + length);
  segment.set([0xff, 0xe1, length >> 8, length & 0xff]);
  segment.set(HEAD, 4);
  const view = new DataView(segment.buffer, 4 + HEAD.length);
  view.setUint32(0, 0x4d4d002a); // big-endian TIFF
  view.setUint32(4, 8);
  const entry = (at: number, tag: number, type: number, count: number) => {
    view.setUint16(at, tag);
    view.setUint16(at + 2, type);
    view.setUint32(at + 4, count);
    return at + 8;
  };
  view.setUint16(8, entries);
  view.setUint16(entry(10, ORIENTATION, SHORT, 1), orientation);
  if (place === null) return segment;
  view.setUint32(entry(22, GPS, LONG, 1), gpsAt);
  view.setUint16(gpsAt, 4);
  const axes = [
    { letter: LATITUDE_REF, parts: LATITUDE, of: place.latitude },
    { letter: LONGITUDE_REF, parts: LONGITUDE, of: place.longitude },
  ];
  for (const [i, { letter, parts, of }] of axes.entries()) {
    const at = gpsAt + 2 + 24 * i;
    const values = partsFrom + 24 * i;
    view.setUint8(entry(at, letter, ASCII, 2), of.letter.charCodeAt(0));
    view.setUint32(entry(at + 12, parts, RATIONAL, 3), values);
    for (const [k, part] of of.parts.entries()) view.setUint32(values + 4 * k, part);
  }
  return segment;
}
