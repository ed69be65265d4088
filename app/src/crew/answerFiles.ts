import { siteFileName } from '@footmark/exchange';
import { type Answer, type Site, writeAnswer } from '@footmark/site';
import { loadFile } from '../storage/fileStore';

/** What goes back: the answer, and its photos by their ids. A photo that is not on the device stays out. */
export async function answerFiles(site: Site, answer: Answer): Promise<readonly File[]> {
  const name = siteFileName({ ...site, name: `${site.name} answer ${answer.by}` }, 'json');
  const photos = await Promise.all(answer.found.flatMap((f) => f.photos).map(loadFile));
  return [
    new File([writeAnswer(answer)], name, { type: 'application/json' }),
    ...photos.flatMap((photo) =>
      photo === null
        ? []
        : new File([photo.blob], `${photo.id}.${ENDINGS[photo.blob.type] ?? 'jpg'}`, {
            type: photo.blob.type,
          }),
    ),
  ];
}

const ENDINGS: Readonly<Record<string, string>> = {
  'image/jpeg': 'jpg',
  'image/png': 'png',
  'image/webp': 'webp',
  'image/gif': 'gif',
};

/** Hands files to the device's own share sheet where it takes them, else to the browser as downloads. */
export async function handOver(files: readonly File[]): Promise<void> {
  const data = { files: [...files] };
  if (navigator.canShare?.(data)) {
    try {
      await navigator.share(data);
      return;
    } catch (error) {
      if (error instanceof DOMException && error.name === 'AbortError') return; // the person thought better of it
    }
  }
  for (const file of files) {
    const url = URL.createObjectURL(file);
    const link = document.createElement('a');
    link.href = url;
    link.download = file.name;
    link.click();
    window.setTimeout(() => URL.revokeObjectURL(url), 10_000);
  }
}
