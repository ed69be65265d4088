import { readBundle } from '@footmark/exchange';
import { openSite, type Site } from '@footmark/site';
import type { SaidOfFile } from '@footmark/words';
import { importPicture, UNDERLAY_LONGEST_PX } from '../pictures/importPicture';
import { saveFile } from '../storage/fileStore';
import { words } from '../words';

/** A file of JSON is read whole: larger ones are refused by their size, before they are. */
const LARGEST_FILE_BYTES = 25_000_000;

/** A site from a file; `keepPictures` puts what came with it on this device, for a site of this id, and gives the names of those that could not be kept. */
export type SiteFile =
  | {
      readonly ok: true;
      readonly site: Site;
      readonly notes: readonly string[];
      readonly keepPictures: (siteId: string, now: number) => Promise<readonly string[]>;
    }
  | { readonly ok: false; readonly said: SaidOfFile };

/** Opens a site file, or a site with its photos as a zip. */
export async function openSiteFile(file: File): Promise<SiteFile> {
  const head = new Uint8Array(await file.slice(0, 2).arrayBuffer());
  // every zip begins with PK
  if (head[0] === 0x50 && head[1] === 0x4b) return openBundle(new Uint8Array(await file.arrayBuffer()));
  if (file.size > LARGEST_FILE_BYTES) {
    const failure = { code: 'too-large', characters: file.size, most: LARGEST_FILE_BYTES } as const;
    return { ok: false, said: words.fileProblemText(failure) };
  }
  const opened = openSite(await file.text());
  if (!opened.ok) return { ok: false, said: words.fileProblemText(opened.failure) };
  return { ok: true, site: opened.site, notes: [], keepPictures: async () => [] };
}

function openBundle(bytes: Uint8Array): SiteFile {
  const read = readBundle(bytes);
  if (!read.ok) return { ok: false, said: words.bundleProblemText(read.failure) };
  const { site, pictures, notes } = read.bundle;
  return {
    ok: true,
    site,
    notes: notes.map((note) => words.bundleNoteText(note)),
    keepPictures: async (siteId, now) => {
      const lost: string[] = [];
      for (const { id, name, bytes: data, type } of pictures) {
        const picture = await importPicture(new Blob([new Uint8Array(data)], { type }), UNDERLAY_LONGEST_PX);
        try {
          if (!picture.ok) throw new Error('no picture');
          const { blob, widthPx, heightPx } = picture;
          await saveFile({ id, site: siteId, blob, name, widthPx, heightPx, addedAt: now });
        } catch {
          lost.push(name);
        }
      }
      return lost;
    },
  };
}
