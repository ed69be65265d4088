// What has to come over the wire before a screen is there: `pnpm sizes` builds and prints it, and fails over a limit.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { DIST, readJson } from './paths.mjs';

/**
 * A file of the build with what it imports from the start, by their keys in the manifest.
 * @typedef {Readonly<{ file: string, imports?: readonly string[], css?: readonly string[] }>} Chunk
 * @typedef {Readonly<Record<string, Chunk>>} Manifest
 * @typedef {Readonly<{ file: string, gzip: number }>} Sized
 */

/** kB are thousands, as people who pay by the megabyte count them; gzip at its best, which is the same everywhere. */
const KB = 1000;
const LEVEL = 9;

/** What is shown first, the sources that have to be here for it, and the most that code and styles may weigh (kB, gzip). */
const LOADS = [
  { name: 'first screen', sources: ['index.html', 'src/screens/HomeScreen.tsx'], limit: 350 },
  {
    name: 'a site, opened by its address',
    sources: ['index.html', 'src/screens/SiteScreen.tsx', 'src/session/startSession.ts'],
    limit: 530,
  },
];

/** @param {Manifest} manifest @param {readonly string[]} sources @returns {readonly string[]} files, each once */
export function filesOf(manifest, sources) {
  /** @type {Set<string>} */
  const files = new Set();
  /** @type {Set<string>} */
  const seen = new Set();
  const take = (/** @type {string} */ key) => {
    if (seen.has(key)) return;
    seen.add(key);
    const chunk = manifest[key];
    if (chunk === undefined) throw new Error(`The build has no chunk for ${key}.`);
    files.add(chunk.file);
    for (const css of chunk.css ?? []) files.add(css);
    for (const next of chunk.imports ?? []) take(next);
  };
  for (const source of sources) take(source);
  return [...files];
}

/** @param {string} file @returns {Sized} */
function sized(file) {
  return { file, gzip: gzipSync(readFileSync(join(DIST, file)), { level: LEVEL }).length };
}

/** @param {readonly Sized[]} files */
const sum = (files) => files.reduce((total, { gzip }) => total + gzip, 0);

/** @param {number} bytes */
const kb = (bytes) => (bytes / KB).toFixed(1).padStart(8);

/** @returns {boolean} whether every load keeps its limit */
export function printSizes() {
  const manifestFile = join(DIST, '.vite', 'manifest.json');
  if (!existsSync(manifestFile)) throw new Error('There is no built app in app/dist: the build comes first.');
  /** @type {Manifest} */
  const manifest = readJson(manifestFile);
  let kept = true;
  for (const { name, sources, limit } of LOADS) {
    const files = ['index.html', ...filesOf(manifest, sources)].map(sized).sort((a, b) => b.gzip - a.gzip);
    const total = sum(files);
    const ok = total <= limit * KB;
    kept &&= ok;
    console.log(`\n${name}: ${(total / KB).toFixed(1)} kB gzip of ${limit}${ok ? '' : ', TOO MUCH'}`);
    for (const { file, gzip } of files) console.log(`${kb(gzip)}  ${file}`);
  }
  const all = readdirSync(join(DIST, 'assets')).map((file) => sized(join('assets', file)));
  const isFont = (/** @type {Sized} */ { file }) => file.endsWith('.woff2');
  console.log(`\nall code and styles ${kb(sum(all.filter((each) => !isFont(each)))).trim()} kB gzip`);
  console.log(
    `lettering: ${all.filter(isFont).length} files, of which a page takes those whose letters it shows`,
  );
  for (const { file, gzip } of all.filter(isFont)) console.log(`${kb(gzip)}  ${file}`);
  return kept;
}
