import { siteFileName } from '@footmark/exchange';
import { type Answer, type Site, writeAnswer } from '@footmark/site';
import type { NewFile } from '../handOff/saveFile';
import { loadFile } from '../storage/fileStore';

/** What goes back: the answer, and its photos by their ids. A photo that is not on the device stays out. */
export async function answerFiles(site: Site, answer: Answer): Promise<readonly NewFile[]> {
  const name = siteFileName({ ...site, name: `${site.name} answer ${answer.by}` }, 'json');
  const photos = await Promise.all(answer.found.flatMap((f) => f.photos).map(loadFile));
  return [
    { name, data: writeAnswer(answer), type: 'application/json' },
    ...photos.flatMap((photo) =>
      photo === null
        ? []
        : {
            name: `${photo.id}.${ENDINGS[photo.blob.type] ?? 'jpg'}`,
            data: photo.blob,
            type: photo.blob.type,
          },
    ),
  ];
}

const ENDINGS: Readonly<Record<string, string>> = {
  'image/jpeg': 'jpg',
  'image/png': 'png',
  'image/webp': 'webp',
  'image/gif': 'gif',
};
