import { crc32 } from 'node:zlib';
import { type BundleRead, picturesOfSite, readBundle, writeBundle } from '@footmark/exchange';
import { en, es } from '@footmark/words';
import { soundBundles, zipMutators } from '../mutate/zips';
import { zipFiles } from '../nodeZip';
import { type FuzzReader, inWords } from '../reader';
import { isSameData, type SiteBack, siteBack, siteWrong } from '../whole';

type Read = {
  readonly accepted: boolean;
  readonly opened: BundleRead;
  readonly again: BundleRead | null;
  readonly file: SiteBack | null;
};

const AT = Date.UTC(2026, 4, 4, 8);

/**
 * A site with its pictures in a zip. Partial: a site or a picture that does not come back from a bundle of its own, a file of the archive that is
 * neither taken nor told of, and a file that was taken although Node's own zlib finds it damaged.
 */
export const reader: FuzzReader<Read> = {
  name: 'bundle',
  seeds: soundBundles,
  mutators: zipMutators,
  read(input) {
    const opened = readBundle(input);
    if (!opened.ok) {
      for (const words of [en, es]) inWords(words.bundleProblemText(opened.failure));
      return { accepted: false, opened, again: null, file: null };
    }
    const { site, pictures, notes } = opened.bundle;
    for (const note of notes) for (const words of [en, es]) inWords(words.bundleNoteText(note));
    return {
      accepted: true,
      opened,
      again: readBundle(writeBundle(site, pictures, AT)),
      file: siteBack(site),
    };
  },
  judge(input, { opened, again, file }) {
    if (!opened.ok || file === null || again === null) return 'accepted without a site';
    const wrong = siteWrong(file);
    if (wrong !== null) return wrong;
    if (!again.ok) return 'its own bundle is refused';
    const { site, pictures, notes } = opened.bundle;
    if (!isSameData(site, again.bundle.site)) return 'another site in its own bundle';
    const told = (list: typeof pictures) =>
      list
        .map((p) => `${p.id} ${p.name} ${p.type} ${crc32(p.bytes)}`)
        .sort()
        .join();
    if (told(pictures) !== told(again.bundle.pictures)) return 'other pictures in its own bundle';
    const wanted = picturesOfSite(site);
    const missing = notes.find((n) => n.code === 'pictures-missing');
    const gone = missing?.code === 'pictures-missing' ? missing.count : 0;
    if (pictures.length + gone !== wanted.length)
      return `${pictures.length} pictures and ${gone} missing of ${wanted.length}`;
    const listed = notes.reduce((sum, n) => sum + ('names' in n ? n.names.length : 0), 0);
    const files = zipFiles(input).filter(({ name }) => !name.endsWith('/'));
    const own = files.filter(({ name }) => name === 'site.json' || name === 'pictures.json').length;
    if (own + pictures.length + listed !== files.length)
      return `${files.length} files: ${own} of its own, ${pictures.length} pictures, ${listed} told of`;
    const damaged = files.find((f) => f.bytes === null && isTaken(f.name, pictures));
    return damaged === undefined ? null : `taken although damaged: ${damaged.name}`;
  },
};

function isTaken(name: string, pictures: readonly { readonly id: string }[]): boolean {
  if (name === 'site.json' || name === 'pictures.json') return true;
  return pictures.some(({ id }) => name.startsWith(`pictures/${id}.`));
}
