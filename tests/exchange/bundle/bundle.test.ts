import { type BundlePicture, picturesOfSite, readBundle, writeBundle } from '@footmark/exchange';
import { type Site, writeSite } from '@footmark/site';
import { en } from '@footmark/words';
import fc from 'fast-check';
import JSZip from 'jszip';
import { describe, expect, it } from 'vitest';
import { isThere, linesFrom } from '../../debian/programs';
import { rearAlley, type Sample } from '../rearAlley';

// Archives are written and read here by jszip too, which shares no code with the library that we use.

const AT = Date.UTC(2026, 4, 4, 8);

const PNG = Uint8Array.from([
  0x89,
  0x50,
  0x4e,
  0x47,
  0x0d,
  0x0a,
  0x1a,
  0x0a,
  ...Array.from({ length: 500 }, (_, i) => i % 251),
]);
const JPEG = Uint8Array.from([
  0xff,
  0xd8,
  0xff,
  0xe0,
  ...Array.from({ length: 900 }, (_, i) => (i * 7) % 256),
]);

/** The sample with a photo on two readings. */
function photographed(): Sample {
  return rearAlley((raw) => {
    const [first, second] = raw.runs[0]?.readings ?? [];
    if (first !== undefined) first.photo = 'i1';
    if (second !== undefined) second.photo = 'i2';
  });
}

const { site } = photographed();
const pictures: readonly BundlePicture[] = [
  { id: 'i1', name: 'IMG 0042.png', bytes: PNG },
  { id: 'i2', name: 'Roots \u202egpj.exe', bytes: JPEG },
];
const bundle = writeBundle(site, pictures, AT);

async function zipOf(
  files: Readonly<Record<string, string | Uint8Array>>,
  siteFile: string | null = writeSite(site),
) {
  const zip = new JSZip();
  if (siteFile !== null) zip.file('site.json', siteFile);
  for (const [name, data] of Object.entries(files)) zip.file(name, data, { createFolders: false });
  return zip.generateAsync({ type: 'uint8array', compression: 'DEFLATE' });
}

function opened(bytes: Uint8Array) {
  const read = readBundle(bytes);
  if (!read.ok) throw new Error(JSON.stringify(read.failure));
  return read.bundle;
}

/** Every text about it is a sentence with its values. */
function refusedAs(bytes: Uint8Array): string {
  const read = readBundle(bytes);
  if (read.ok) return 'opened';
  const { text, cure } = en.bundleProblemText(read.failure);
  expect(`${text} ${cure}`).not.toMatch(/undefined|NaN|null/);
  expect(text).toMatch(/^\p{Lu}.*\.$/u);
  return read.failure.code;
}

describe('a bundle', () => {
  it('has the site and its pictures, byte by byte', () => {
    const { site: back, pictures: shown, notes, migratedFrom } = opened(bundle);
    expect(back).toEqual(site);
    expect(migratedFrom).toBeNull();
    expect(notes).toEqual([]);
    expect(shown).toEqual([
      { id: 'i1', name: 'IMG 0042.png', bytes: PNG, type: 'image/png' },
      { id: 'i2', name: 'Roots gpj.exe', bytes: JPEG, type: 'image/jpeg' },
    ]);
    expect(picturesOfSite(site)).toEqual(['i1', 'i2']);
  });

  it('is read by another reader', async () => {
    const zip = await JSZip.loadAsync(bundle, { checkCRC32: true });
    expect(Object.keys(zip.files).sort()).toEqual([
      'pictures.json',
      'pictures/i1.png',
      'pictures/i2.jpg',
      'site.json',
    ]);
    expect(await zip.file('site.json')?.async('string')).toBe(writeSite(site));
    expect(await zip.file('pictures/i2.jpg')?.async('uint8array')).toEqual(JPEG);
  });

  // Reference: the zip library of Python
  it.skipIf(!isThere('python3'))('is whole by a third', () => {
    const program =
      'import sys,zipfile,io,base64; z=zipfile.ZipFile(io.BytesIO(base64.b64decode(sys.stdin.read()))); print(z.testzip(), sorted(z.namelist()))';
    const [line] = linesFrom('python3', ['-c', program], [Buffer.from(bundle).toString('base64')]);
    expect(line).toBe("None ['pictures.json', 'pictures/i1.png', 'pictures/i2.jpg', 'site.json']");
  });

  it('that another program wrote is read: packed, stored, with folders and a comment', async () => {
    const zip = new JSZip();
    zip.file('site.json', writeSite(site));
    zip.folder('pictures');
    zip.file('pictures/i1.png', PNG, { compression: 'STORE' });
    zip.file('pictures/i2.jpg', JPEG);
    for (const streamFiles of [false, true]) {
      const bytes = await zip.generateAsync({
        type: 'uint8array',
        compression: 'DEFLATE',
        streamFiles,
        comment: 'from elsewhere',
      });
      expect(opened(bytes).pictures.map((p) => [p.id, p.type, p.name])).toEqual([
        ['i1', 'image/png', 'pictures/i1.png'],
        ['i2', 'image/jpeg', 'pictures/i2.jpg'],
      ]);
    }
  });

  it('leaves out what the site does not name and what is no picture, and bears a date that a zip can have', () => {
    const extra = [
      ...pictures,
      { id: 'i9', name: 'x', bytes: PNG },
      { id: 'i2', name: 'y', bytes: Uint8Array.of(1, 2) },
    ];
    expect(opened(writeBundle(site, extra, 0)).pictures.map((p) => p.id)).toEqual(['i1', 'i2']);
  });

  it('tells what is missing, what it does not know, and what is no picture', async () => {
    const bytes = await zipOf({
      'pictures/i1.png': 'no picture',
      'readme.txt': 'hello',
      'pictures/i7.png': PNG,
    });
    const { notes, pictures: shown } = opened(bytes);
    expect(shown).toEqual([]);
    expect(notes).toEqual([
      { code: 'unknown-files', names: ['readme.txt', 'pictures/i7.png'] },
      { code: 'not-pictures', names: ['pictures/i1.png'] },
      { code: 'pictures-missing', count: 2 },
    ]);
    for (const note of notes) expect(en.bundleNoteText(note)).toMatch(/^[\p{Lu}\d].*\.$/u);
  });
});

describe('a bundle that was made to do harm, or was damaged', () => {
  it.each([
    '../site.json',
    'pictures/../../x.png',
    '/etc/passwd',
    'C:\\x.png',
    'C:x.png',
    'pictures\\i1.png',
    'pictures//i1.png',
    './i1.png',
    `pictures/${'x'.repeat(300)}.png`,
    'pictures/i1\u0001.png',
  ])('a path outside, %j', async (name) => {
    expect(refusedAs(await zipOf({ [name]: PNG }))).toBe('bundle-path-outside');
  });

  it('a link to elsewhere', async () => {
    const zip = new JSZip();
    zip.file('site.json', writeSite(site));
    zip.file('pictures/i1.png', '/etc/passwd', { unixPermissions: 0o120_777 });
    const bytes = await zip.generateAsync({ type: 'uint8array', platform: 'UNIX' });
    expect(refusedAs(bytes)).toBe('bundle-path-outside');
  });

  it('one name twice, also in other letters', async () => {
    expect(refusedAs(await zipOf({ 'Site.json': '{}' }))).toBe('bundle-name-twice');
    expect(refusedAs(await zipOf({ 'pictures/a\u0301.png': PNG, 'pictures/\u00e1.png': PNG }))).toBe(
      'bundle-name-twice',
    );
  });

  it('more files than any site has', async () => {
    const files = Object.fromEntries(Array.from({ length: 1001 }, (_, i) => [`f${i}`, '']));
    expect(refusedAs(await zipOf(files))).toBe('bundle-too-many-files');
  });

  it('a picture that swells: 100 MB of nothing in 100 kB', { timeout: 30_000 }, async () => {
    const bytes = await zipOf({ 'pictures/i1.png': new Uint8Array(100_000_000) });
    expect(bytes.length).toBeLessThan(400_000);
    expect(refusedAs(bytes)).toBe('bundle-swells');
    // the same, and it says that it is small
    const lying = declared(bytes, 'pictures/i1.png', 1000);
    expect(refusedAs(lying)).toBe('bundle-damaged');
  });

  it('a site file that swells beyond what it says', async () => {
    expect(refusedAs(declared(await zipOf({}), 'site.json', 20))).toBe('bundle-damaged');
  });

  it('no zip, no site, another JSON, a newer site, a damaged one', async () => {
    expect(refusedAs(new Uint8Array())).toBe('not-a-bundle');
    expect(refusedAs(PNG)).toBe('not-a-bundle');
    expect(refusedAs(await zipOf({ a: 'b' }, null))).toBe('bundle-without-site');
    expect(refusedAs(await zipOf({}, '{"a":1}'))).toBe('bundle-site');
    const newer: Site = { ...site, version: 999 as Site['version'] }; // what a newer program would write
    expect(refusedAs(await zipOf({}, JSON.stringify(newer)))).toBe('bundle-site');
    expect(refusedAs(bundle.slice(0, -30))).toBe('bundle-damaged');
    expect(refusedAs(bundle.slice(0, bundle.length / 2))).toBe('bundle-damaged');
  });

  it('one bit of a picture: its checksum tells', () => {
    const at = bundle.findIndex((_, i) => JPEG.subarray(0, 20).every((byte, k) => bundle[i + k] === byte));
    const bad = bundle.slice();
    bad[at + 100] = (bad[at + 100] ?? 0) ^ 1;
    expect(refusedAs(bad)).toBe('bundle-damaged');
  });

  it('the list of what pictures were called: damaged it is refused, no list at all is told', async () => {
    expect(refusedAs(declared(bundle, 'pictures.json', 20))).toBe('bundle-damaged');
    for (const list of ['', '{"i1":', '[]', 'null', '7']) {
      const bytes = await zipOf({ 'pictures/i1.png': PNG, 'pictures/i2.jpg': JPEG, 'pictures.json': list });
      const { notes, pictures: shown } = opened(bytes);
      expect(notes).toEqual([{ code: 'names-not-read' }]);
      expect(shown.map((p) => p.name)).toEqual(['pictures/i1.png', 'pictures/i2.jpg']);
    }
  });

  it('never throws, whatever bytes are changed or cut', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(fc.nat(bundle.length - 1), fc.nat(255), fc.nat(40), (at, byte, cut) => {
        const bad = Uint8Array.from([
          ...bundle.subarray(0, at),
          byte,
          ...bundle.subarray(at + 1 + (cut > 30 ? cut : 0)),
        ]);
        const read = readBundle(bad);
        if (!read.ok) expect(en.bundleProblemText(read.failure).text).not.toBe('');
      }),
      { numRuns: 150, seed: 3 },
    );
  });
});

/** An archive that says in its directory that a file is of another size. */
function declared(bytes: Uint8Array, name: string, size: number): Uint8Array {
  const changed = bytes.slice();
  const view = new DataView(changed.buffer);
  for (let at = 0; at < changed.length - 46; at += 1) {
    if (view.getUint32(at, true) !== 0x02014b50) continue;
    const found = new TextDecoder().decode(
      changed.subarray(at + 46, at + 46 + view.getUint16(at + 28, true)),
    );
    if (found === name) view.setUint32(at + 24, size, true);
  }
  return changed;
}
