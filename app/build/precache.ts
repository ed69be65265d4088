import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import type { Plugin } from 'vite';

/** The service worker's file, and the name in it that the list of files takes the place of. */
const WORKER = 'sw.js';
const LIST = '__PRECACHE__';

/** Every file under a folder, as a path in an address. */
function pathsUnder(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/'));
}

/** Those that are not for a page to ask for: the worker itself, and what the build writes for tools. */
const isKept = (path: string) => path !== WORKER && !path.startsWith('.');

const sha256 = (content: string | Buffer) => createHash('sha256').update(content).digest('base64');

/** Tells the service worker what the build consists of: the path and hash of every file, and a version that follows from them. */
export function precache(): Plugin {
  return {
    name: 'footmark-precache',
    apply: 'build',
    writeBundle: ({ dir }) => {
      if (dir === undefined) return;
      const files = pathsUnder(dir)
        .filter(isKept)
        .sort()
        .map((path) => ({ path, integrity: `sha256-${sha256(readFileSync(join(dir, path)))}` }));
      const version = createHash('sha256').update(JSON.stringify(files)).digest('hex').slice(0, 12);
      const worker = readFileSync(join(dir, WORKER), 'utf8');
      if (worker.split(LIST).length !== 2) throw new Error(`${WORKER} does not name ${LIST} once`);
      if (/\bimport\b|\bexport\b/.test(worker)) throw new Error(`${WORKER} must stand alone`);
      writeFileSync(
        join(dir, WORKER),
        worker.replace(LIST, () => JSON.stringify({ version, files })),
      );
    },
  };
}
