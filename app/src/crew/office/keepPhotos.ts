import { importPicture, PHOTO_LONGEST_PX } from '../../pictures/importPicture';
import { saveFile } from '../../storage/fileStore';
import type { OpenedAnswerFiles } from './readAnswerFiles';

/** Puts the photos of an answer on this device under their own ids; gives the names of those that could not be kept. */
export async function keepPhotos(
  { photos }: OpenedAnswerFiles,
  site: string,
  now: number,
): Promise<readonly string[]> {
  const lost: string[] = [];
  for (const [id, file] of photos) {
    const photo = await importPicture(file, PHOTO_LONGEST_PX);
    try {
      if (!photo.ok) throw new Error('no picture');
      const { blob, widthPx, heightPx } = photo;
      await saveFile({ id, site, blob, name: file.name, widthPx, heightPx, addedAt: now });
    } catch {
      lost.push(file.name);
    }
  }
  return lost;
}
