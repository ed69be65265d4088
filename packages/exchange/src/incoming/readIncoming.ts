import { fail } from '@footmark/geometry';
import { dxfGroups } from './dxf/dxfGroups';
import { BINARY_MARK, readDxf } from './dxf/readDxf';
import { readGeoJson } from './geojson/readGeoJson';
import type { Incoming, IncomingSteps } from './incoming';
import { readKml } from './kml/readKml';
import { readPointTable } from './table/readPointTable';

const READERS: Readonly<Record<Incoming['format'], (text: string) => IncomingSteps>> = {
  geojson: readGeoJson,
  kml: readKml,
  dxf: readDxf,
  table: readPointTable,
};

/** Reads a file's text by what it begins with, whatever its name says: GeoJSON, KML, DXF, or a table of points. */
export function* readIncoming(text: string): IncomingSteps {
  const format = formatOf(text);
  return format === null ? fail('unknown-format') : yield* READERS[format](text);
}

/** The format of a text by its beginning; null for what is none of them. */
function formatOf(text: string): Incoming['format'] | null {
  const start = text
    .slice(0, 4000)
    .replace(/^\ufeff/, '')
    .trimStart();
  if (start === '') return null;
  if (start.startsWith('{') || start.startsWith('[')) return 'geojson';
  if (start.startsWith('<')) return 'kml';
  if (start.startsWith(BINARY_MARK) || isDxf(start)) return 'dxf';
  // a table is text: a zip, a picture or a drawing of another kind is not
  return [...start].some((c) => c < '\t' || c === '\ufffd') ? null : 'table';
}

function isDxf(start: string): boolean {
  const first = dxfGroups(start).next();
  return first?.code === 0 && first.value.trim() === 'SECTION';
}
