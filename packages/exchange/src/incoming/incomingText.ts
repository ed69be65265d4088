import { fail, ok, type Result } from '@footmark/geometry';
import type { IncomingProblemCode } from '@footmark/words';
import { strFromU8 } from 'fflate';
import { MOST_FILE_BYTES } from '../bundle/bundle';
import { unpackEntry } from '../bundle/unpackEntry';
import { zipDirectory } from '../bundle/zipDirectory';

/** Files of an archive that are looked at for one. */
const MOST_FILES = 1000;

/** What is not UTF-8 comes out as this. */
const NOT_UTF_8 = '\ufffd';

/**
 * The text of a file: UTF-8, or else the western letters that older drawings are in; of a KMZ (a zip, OGC 12-007) its first KML file. Pictures and the
 * like beside that are not unpacked.
 */
export function incomingText(bytes: Uint8Array): Result<string, IncomingProblemCode> {
  if (bytes[0] !== 0x50 || bytes[1] !== 0x4b) return ok(textOf(bytes));
  const entries = zipDirectory(bytes, MOST_FILES, (name) => strFromU8(name));
  if (entries === 'damaged') return fail('cut-short');
  if (typeof entries === 'string') return fail('unknown-format');
  const entry = entries.find(({ name }) => name.toLowerCase().endsWith('.kml'));
  if (entry === undefined) return fail('unknown-format');
  if (entry.bytes > MOST_FILE_BYTES)
    return fail('too-large', { characters: entry.bytes, most: MOST_FILE_BYTES });
  const unpacked = unpackEntry(bytes, entry);
  if (unpacked === 'not-read') return fail('unknown-format');
  return typeof unpacked === 'string' ? fail('cut-short') : ok(textOf(unpacked));
}

function textOf(bytes: Uint8Array): string {
  const text = strFromU8(bytes);
  return text.includes(NOT_UTF_8) ? strFromU8(bytes, true) : text;
}
