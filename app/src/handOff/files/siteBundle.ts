import { picturesOfSite, writeBundle } from '@footmark/exchange';
import type { Site } from '@footmark/site';
import { loadFile } from '../../storage/fileStore';

/** A site with the pictures of it that are on this device, as a zip; `now`: milliseconds since 1970. */
export async function siteBundle(site: Site, now: number): Promise<Uint8Array<ArrayBuffer>> {
  const files = await Promise.all(picturesOfSite(site).map(loadFile));
  const pictures = await Promise.all(
    files
      .flatMap((file) => (file === null ? [] : [file]))
      .map(async ({ id, name, blob }) => ({
        id,
        name,
        bytes: new Uint8Array(await blob.arrayBuffer()),
      })),
  );
  return new Uint8Array(writeBundle(site, pictures, now));
}
