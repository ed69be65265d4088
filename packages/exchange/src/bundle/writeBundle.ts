import { type Site, writeSite } from '@footmark/site';
import { strToU8, type Zippable, zipSync } from 'fflate';
import { plainText } from '../harmless';
import { type BundlePicture, NAMES_ENTRY, PICTURES_FOLDER, picturesOfSite, SITE_ENTRY } from './bundle';
import { PICTURE_EXTENSION, pictureKind } from './pictureKind';

/** A zip's dates run from 1980 to 2099 (milliseconds since 1970, a day inside for the zones); a clock that was never set is before. */
const [FIRST_DATE, LAST_DATE] = [Date.UTC(1980, 0, 2), Date.UTC(2099, 11, 30)];

/** Pictures are packed already. */
const AS_IT_IS = 0;

/**
 * A zip of the site file and the pictures that it names: `site.json`, `pictures/ID.EXT`, and `pictures.json` with what they were called. Pictures that the site
 * does not name, and bytes that are no picture, are left out. `at` (milliseconds since 1970) is the date that its files bear.
 */
export function writeBundle(site: Site, pictures: readonly BundlePicture[], at: number): Uint8Array {
  const named = new Set(picturesOfSite(site));
  const files: Zippable = { [SITE_ENTRY]: strToU8(writeSite(site)) };
  const names: Record<string, string> = {};
  for (const { id, name, bytes } of pictures) {
    const kind = pictureKind(bytes);
    if (kind === null || !named.has(id)) continue;
    files[`${PICTURES_FOLDER}${id}.${PICTURE_EXTENSION[kind]}`] = [bytes, { level: AS_IT_IS }];
    names[id] = plainText(name);
  }
  files[NAMES_ENTRY] = strToU8(`${JSON.stringify(names, null, 1)}\n`);
  return zipSync(files, { mtime: Math.min(LAST_DATE, Math.max(FIRST_DATE, at)) });
}
