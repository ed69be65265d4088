import type { Picture } from '@footmark/sheet';
import type { Site } from '@footmark/site';
import { loadFile } from '../storage/fileStore';

/** The photos of a site's readings that are on this device, by their ids; of the kinds that a PDF takes. */
export async function sheetPictures(site: Site): Promise<ReadonlyMap<string, Picture>> {
  const ids = site.runs.flatMap((run) => run.readings.flatMap(({ photo }) => photo ?? []));
  const files = await Promise.all(ids.map(loadFile));
  const found = await Promise.all(
    files.map(async (file) => {
      if (file === null || (file.blob.type !== 'image/jpeg' && file.blob.type !== 'image/png')) return [];
      const picture: Picture = {
        bytes: new Uint8Array(await file.blob.arrayBuffer()),
        width: file.widthPx,
        height: file.heightPx,
        mediaType: file.blob.type,
      };
      return [[file.id, picture] as const];
    }),
  );
  return new Map(found.flat());
}
