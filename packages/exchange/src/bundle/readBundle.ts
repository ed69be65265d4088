import { type Opened, openSite } from '@footmark/site';
import type { BundleFailure, BundleNote } from '@footmark/words';
import { strFromU8 } from 'fflate';
import { plainText } from '../harmless';
import {
  type Bundle,
  MOST_BUNDLE_BYTES,
  MOST_FILE_BYTES,
  MOST_FILES,
  MOST_UNPACKED_BYTES,
  NAMES_ENTRY,
  PICTURES_FOLDER,
  picturesOfSite,
  SITE_ENTRY,
} from './bundle';
import { leadsOutside } from './entryName';
import { pictureKind } from './pictureKind';
import { unpackEntry } from './unpackEntry';
import { type ZipEntry, zipDirectory } from './zipDirectory';

export type BundleRead =
  | { readonly ok: true; readonly bundle: Bundle }
  | { readonly ok: false; readonly failure: BundleFailure };

const MOST_NAME_CHARACTERS = 200;

/**
 * Opens a bundle: all names are looked at first, then sizes, then the site file goes through the same door as any other, then the pictures that it
 * names. Files that are none of these are listed and not unpacked. What fails leaves nothing behind.
 */
export function readBundle(bytes: Uint8Array): BundleRead {
  if (bytes.length > MOST_BUNDLE_BYTES)
    return refuse({ code: 'bundle-too-large', bytes: bytes.length, most: MOST_BUNDLE_BYTES });
  const entries = zipDirectory(bytes, MOST_FILES, (name) => strFromU8(name));
  if (entries === 'not-a-zip') return refuse({ code: 'not-a-bundle' });
  if (entries === 'damaged') return refuse({ code: 'bundle-damaged' });
  if (entries === 'not-read') return refuse({ code: 'bundle-not-read' });
  const wrong = wrongNames(entries);
  if (wrong !== null) return refuse(wrong);

  const siteEntry = entries.find(({ name }) => name === SITE_ENTRY);
  if (siteEntry === undefined) return refuse({ code: 'bundle-without-site' });
  const opened = openEntry(bytes, siteEntry);
  if (!opened.ok) return refuse(opened.failure);
  return readPictures(bytes, entries, opened);
}

/** What is wrong with the names, the number or the sizes of files, before any is unpacked; null when nothing is. */
function wrongNames(entries: readonly ZipEntry[]): BundleFailure | null {
  if (entries.length > MOST_FILES) return { code: 'bundle-too-many-files', most: MOST_FILES };
  const seen = new Set<string>();
  let total = 0;
  for (const { name, isLink, bytes } of entries) {
    const shown = plainText(name).slice(0, MOST_NAME_CHARACTERS);
    if (isLink || leadsOutside(name)) return { code: 'bundle-path-outside', name: shown };
    // where large and small letters are one, these would be one file
    const key = name.normalize('NFC').toLowerCase();
    if (seen.has(key)) return { code: 'bundle-name-twice', name: shown };
    seen.add(key);
    total += bytes;
    if (bytes > MOST_FILE_BYTES) return { code: 'bundle-swells', most: MOST_FILE_BYTES };
  }
  return total > MOST_UNPACKED_BYTES ? { code: 'bundle-swells', most: MOST_UNPACKED_BYTES } : null;
}

function openEntry(
  archive: Uint8Array,
  entry: ZipEntry,
): Extract<Opened, { ok: true }> | { readonly ok: false; readonly failure: BundleFailure } {
  const bytes = unpackEntry(archive, entry);
  if (typeof bytes === 'string') return unpackFailure(bytes);
  const opened = openSite(strFromU8(bytes));
  return opened.ok ? opened : { ok: false, failure: { code: 'bundle-site', failure: opened.failure } };
}

function readPictures(
  archive: Uint8Array,
  entries: readonly ZipEntry[],
  { site, migratedFrom }: Extract<Opened, { ok: true }>,
): BundleRead {
  const wanted = new Set(picturesOfSite(site));
  const pictures: Bundle['pictures'][number][] = [];
  const unknown: string[] = [];
  const notPictures: string[] = [];
  const names = namesIn(archive, entries);
  if (typeof names === 'string') return unpackFailure(names);
  for (const entry of entries) {
    if (entry.name === SITE_ENTRY || entry.name === NAMES_ENTRY) continue;
    const id = idOf(entry.name);
    if (id === null || !wanted.has(id)) {
      unknown.push(plainText(entry.name));
      continue;
    }
    const bytes = unpackEntry(archive, entry);
    if (typeof bytes === 'string') return unpackFailure(bytes);
    const type = pictureKind(bytes);
    if (type === null) notPictures.push(plainText(entry.name));
    else if (wanted.delete(id)) pictures.push({ id, name: names?.get(id) ?? entry.name, bytes, type });
  }
  const notes: BundleNote[] = [];
  if (unknown.length > 0) notes.push({ code: 'unknown-files', names: unknown });
  if (notPictures.length > 0) notes.push({ code: 'not-pictures', names: notPictures });
  if (wanted.size > 0) notes.push({ code: 'pictures-missing', count: wanted.size });
  if (names === null) notes.push({ code: 'names-not-read' });
  return { ok: true, bundle: { site, migratedFrom, pictures, notes } };
}

/** What pictures were called, by id; null for bytes that are no such list, and none where the archive has no list. */
function namesIn(
  archive: Uint8Array,
  entries: readonly ZipEntry[],
): ReadonlyMap<string, string> | null | 'damaged' | 'not-read' {
  const entry = entries.find(({ name }) => name === NAMES_ENTRY);
  if (entry === undefined) return new Map();
  const bytes = unpackEntry(archive, entry);
  if (typeof bytes === 'string') return bytes;
  try {
    const listed: unknown = JSON.parse(strFromU8(bytes));
    if (typeof listed !== 'object' || listed === null || Array.isArray(listed)) return null;
    return new Map(
      Object.entries(listed).flatMap(([id, name]) =>
        typeof name === 'string' ? [[id, plainText(name).slice(0, MOST_NAME_CHARACTERS)] as const] : [],
      ),
    );
  } catch {
    return null;
  }
}

/** `pictures/i7.jpg` is `i7`; null for another file. */
function idOf(name: string): string | null {
  if (!name.startsWith(PICTURES_FOLDER)) return null;
  return /^([A-Za-z0-9_-]{1,64})\.[a-z]{3,4}$/.exec(name.slice(PICTURES_FOLDER.length))?.[1] ?? null;
}

function unpackFailure(problem: 'damaged' | 'not-read'): {
  readonly ok: false;
  readonly failure: BundleFailure;
} {
  return refuse({ code: problem === 'damaged' ? 'bundle-damaged' : 'bundle-not-read' });
}

function refuse(failure: BundleFailure): { readonly ok: false; readonly failure: BundleFailure } {
  return { ok: false, failure };
}
