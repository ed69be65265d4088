import { picturesOfSite, writeBundle } from '@footmark/exchange';
import type { Dice } from '../../random/dice';
import { END, ENTRY, LOCAL, zipFiles, zipOf } from '../nodeZip';
import { bytesOf, type Mutator } from '../reader';
import { soundSites } from '../soundSites';
import { below, joined, upTo } from './bytes';
import { hostileTexts } from './hostile';
import { jsonMutators } from './json';

const AT = Date.UTC(2026, 4, 4, 8);

/** First bytes of pictures, and bytes behind them. */
const pictureBytes: readonly Uint8Array[] = [
  [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a],
  [0xff, 0xd8, 0xff, 0xe0],
  [0x47, 0x49, 0x46, 0x38, 0x39, 0x61],
].map((head) => Uint8Array.from([...head, ...Array.from({ length: 60 }, (_, i) => (i * 37) % 251)]));

/** Bundles of small and large sites, with and without pictures. */
export function soundBundles(): readonly Uint8Array[] {
  return soundSites().map((site, i) => {
    const pictures = picturesOfSite(site).map((id, k) => ({
      id,
      name: k === 0 ? 'Raíces \u202egpj.exe' : `IMG ${k}.png`,
      bytes: pictureBytes[k % pictureBytes.length] ?? new Uint8Array(),
    }));
    return writeBundle(site, i % 2 === 0 ? pictures : pictures.slice(1), AT);
  });
}

type Files = Record<string, Uint8Array>;

/** The archive packed anew with other files in it; as it was where it cannot be unpacked any more. */
function repacked(change: (files: Files, dice: Dice) => void): Mutator {
  return (input, dice) => {
    try {
      const files: Files = {};
      for (const { name, bytes } of zipFiles(input)) if (bytes !== null) files[name] = bytes;
      change(files, dice);
      return zipOf(Object.entries(files), dice.next() < 0.5);
    } catch {
      return input;
    }
  };
}

const NAMES = [
  '../site.json',
  '/etc/passwd',
  'a/../../b',
  'C:\\x.txt',
  'a\\b',
  '.',
  '..',
  'SITE.JSON',
  'site.json/',
  'pictures/',
  'pictures/i1.png',
  'pictures/i1.jpg',
  'pictures/../site.json',
  'pictures/x.exe',
  'pictures.json',
  'doc.kml',
  'x'.repeat(300),
];

const moreFiles = repacked((files, dice) => {
  for (let n = upTo(dice, 1200); n > 0; n -= 1) {
    const name = dice.pick([dice.pick(NAMES), dice.pick(hostileTexts), `pictures/${dice.id('i')}.png`]);
    files[name] ??= dice.pick([...pictureBytes, bytesOf('{}'), new Uint8Array(upTo(dice, 100_000))]);
  }
});

const otherNames = repacked((files, dice) => {
  const name = dice.pick(Object.keys(files));
  const bytes = files[name] ?? new Uint8Array();
  if (dice.next() < 0.7) delete files[name];
  files[dice.pick([...NAMES, ...hostileTexts])] = bytes;
});

const otherContents = repacked((files, dice) => {
  const name = dice.pick(Object.keys(files));
  const bytes = files[name] ?? new Uint8Array();
  files[name] =
    name.endsWith('.json') && dice.next() < 0.8
      ? dice.pick(jsonMutators)(bytes, dice, [bytes])
      : dice.pick([
          ...pictureBytes,
          new Uint8Array(),
          bytesOf('null'),
          bytes.slice(0, below(dice, bytes.length)),
        ]);
});

/** An archive in an archive; a file that swells a thousandfold. */
const nested: Mutator = (input, dice) => {
  const inner = input.length < 200_000 ? input : new Uint8Array();
  return repacked((files) => {
    files[dice.pick(['site.json', 'pictures/i1.png', 'inner.zip', 'doc.kml'])] = dice.pick([
      inner,
      new Uint8Array(upTo(dice, 20_000_000)),
    ]);
  })(input, dice, []);
};

/** Fields by the record that they are of: place and bytes (APPNOTE.TXT, 4.3; from memory). */
const FIELDS: Readonly<Record<number, readonly (readonly [number, 2 | 4])[]>> = {
  [LOCAL]: [
    [4, 2],
    [6, 2],
    [8, 2],
    [14, 4],
    [18, 4],
    [22, 4],
    [26, 2],
    [28, 2],
  ],
  [ENTRY]: [
    [8, 2],
    [10, 2],
    [16, 4],
    [20, 4],
    [24, 4],
    [28, 2],
    [30, 2],
    [32, 2],
    [38, 4],
    [40, 2],
    [42, 4],
  ],
  [END]: [
    [4, 2],
    [6, 2],
    [8, 2],
    [10, 2],
    [12, 4],
    [16, 4],
    [20, 2],
  ],
};

/** Sizes, checksums, ways of packing, places and counts that are not so. */
const fields: Mutator = (input, dice) => {
  const out = input.slice();
  const view = new DataView(out.buffer);
  const records: number[] = [];
  for (let at = 0; at + 46 < out.length + 24 && at + 4 <= out.length; at += 1)
    if (FIELDS[view.getUint32(at, true)] !== undefined) records.push(at);
  for (let n = upTo(dice, 3); n > 0 && records.length > 0; n -= 1) {
    const at = dice.pick(records);
    const [place, size] = dice.pick(FIELDS[view.getUint32(at, true)] ?? [[0, 2]]);
    if (at + place + size > out.length) continue;
    if (size === 2) {
      const was = view.getUint16(at + place, true);
      view.setUint16(
        at + place,
        dice.pick([0, 1, 8, 9, was + 1, was - 1, 0xffff, 0xa1ff, below(dice, 65_536)]),
        true,
      );
    } else {
      const was = view.getUint32(at + place, true);
      const other = [
        0,
        1,
        was + 1,
        was - 1,
        was * 2,
        79_999_999,
        0x7fffffff,
        0xffffffff,
        below(dice, out.length),
      ];
      view.setUint32(at + place, dice.pick(other) >>> 0, true);
    }
  }
  return out;
};

const aroundIt: Mutator = (input, dice) => {
  const more = new Uint8Array(upTo(dice, 70_000)).fill(below(dice, 256));
  return dice.next() < 0.5 ? joined(more, input) : joined(input, more);
};

export const zipMutators: readonly Mutator[] = [
  fields,
  fields,
  fields,
  moreFiles,
  otherNames,
  otherContents,
  otherContents,
  nested,
  aroundIt,
];
