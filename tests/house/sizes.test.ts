import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { ROOT } from './repository';

type SizesTool = Readonly<{ filesOf: (manifest: unknown, sources: readonly string[]) => readonly string[] }>;

const load = (tool: string): Promise<unknown> =>
  import(/* @vite-ignore */ pathToFileURL(join(ROOT, '.tools', tool)).href);

// The tools are plain scripts without declarations; this is the shape that their comments state.
const { filesOf } = (await load('sizes.mjs')) as SizesTool;

/** In the shape of Vite's manifest: imports from the start, and later ones that do not count. */
const manifest = {
  'index.html': {
    file: 'index.js',
    imports: ['_shared.js'],
    css: ['index.css'],
    dynamicImports: ['later.ts'],
  },
  '_shared.js': { file: 'shared.js', imports: ['_deep.js'] },
  '_deep.js': { file: 'deep.js', imports: ['index.html'], css: ['deep.css'] },
  'later.ts': { file: 'later.js', imports: ['_shared.js'], css: ['later.css'] },
};

describe('what a screen needs from the start', () => {
  it('is all that is imported on the way, with its styles, each file once', () => {
    expect([...filesOf(manifest, ['index.html'])].sort()).toEqual(
      ['deep.css', 'deep.js', 'index.css', 'index.js', 'shared.js'].sort(),
    );
  });

  it('grows by what the screen itself brings', () => {
    const more = filesOf(manifest, ['index.html', 'later.ts']);
    expect(more).toHaveLength(7);
    expect(more).toContain('later.css');
  });

  it('is not told of a screen that the build does not have', () => {
    expect(() => filesOf(manifest, ['gone.ts'])).toThrow('gone.ts');
  });
});
