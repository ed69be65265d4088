import type { Site } from '@footmark/site';
import type { BundleNote } from '@footmark/words';
import type { PictureKind } from './pictureKind';

/** A picture that a site names by its id. */
export type BundlePicture = {
  readonly id: string;
  /** What the device called it; plain text. */
  readonly name: string;
  readonly bytes: Uint8Array;
};

/** A site with its pictures, as they come out of a bundle. */
export type Bundle = {
  readonly site: Site;
  readonly migratedFrom: number | null;
  /** With the media type that their bytes have. */
  readonly pictures: readonly (BundlePicture & { readonly type: PictureKind })[];
  readonly notes: readonly BundleNote[];
};

/** Names in the archive. */
export const SITE_ENTRY = 'site.json';
export const NAMES_ENTRY = 'pictures.json';
export const PICTURES_FOLDER = 'pictures/';

/** What a bundle holds at most. */
export const MOST_FILES = 1000;
export const MOST_BUNDLE_BYTES = 400_000_000;
/** Unpacked, all files together. */
export const MOST_UNPACKED_BYTES = 400_000_000;
/** Unpacked, one file: above the largest picture that the app takes in, and the largest site file. */
export const MOST_FILE_BYTES = 80_000_000;

/** Ids of the pictures that a site names: below the plan, of photo points, of readings, of what crews found. */
export function picturesOfSite(site: Site): readonly string[] {
  const named = [
    ...site.underlays.map(({ file }) => file),
    ...site.features.flatMap((f) => (f.kind === 'photo-point' ? (f.fields.photo ?? []) : [])),
    ...site.runs.flatMap((run) => run.readings.flatMap(({ photo }) => photo ?? [])),
    ...site.asFound.flatMap(({ photos }) => photos),
  ];
  return [...new Set(named)];
}
