import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ROOT, readText } from './repository';

type Manifest = Readonly<{
  dependencies?: Readonly<Record<string, string>>;
  devDependencies?: Readonly<Record<string, string>>;
  packageManager?: string;
}>;
type Credit = Readonly<{ name: string; version: string; licence: string }>;

const manifestAt = (folder: string): Manifest => JSON.parse(readText(join(folder, 'package.json')));
const packages = readdirSync(join(ROOT, 'packages')).map((name) => `packages/${name}`);
const folders = ['.', 'app', 'e2e', 'tests', ...packages];

/** One version and no other: no range, no tag, no address. */
const isExact = (version: string) =>
  version === 'workspace:*' || /^\d+\.\d+\.\d+(?:-[0-9A-Za-z.-]+)?$/.test(version);

const libraries = (of: Manifest['dependencies']) =>
  Object.entries(of ?? {}).filter(([, version]) => version !== 'workspace:*');

describe('what others have made', () => {
  it.each(folders)('is pinned to one version in %s', (folder) => {
    const { dependencies, devDependencies } = manifestAt(folder);
    const loose = Object.entries({ ...dependencies, ...devDependencies }).filter(([, is]) => !isExact(is));
    expect(loose).toEqual([]);
  });

  it('pnpm too', () => {
    expect(manifestAt('.').packageManager).toMatch(/^pnpm@\d+\.\d+\.\d+$/);
  });

  it.each(['^1.2.3', '~1.2.3', '1.x', '*', 'latest', '>=1', 'git+ssh://a/b', 'npm:other@1.0.0', '1.2'])(
    '%s would not be pinned',
    (version) => {
      expect(isExact(version)).toBe(false);
    },
  );

  it('is credited in the app, with the version that is in it', () => {
    const credits: readonly Credit[] = JSON.parse(readText('app/src/about/thirdParty.json'));
    const credited = new Set(credits.map(({ name, version }) => `${name} ${version}`));
    const used = ['app', ...packages.filter((folder) => folder !== 'packages/report')]
      .flatMap((folder) => libraries(manifestAt(folder).dependencies))
      .map(([name, version]) => `${name} ${version}`);
    expect(used.length).toBeGreaterThan(10);
    expect(used.filter((each) => !credited.has(each))).toEqual([]);
    const texts = readText('app/public/third-party.txt');
    expect(credits.filter(({ name, version }) => !texts.includes(`${name} ${version}`))).toEqual([]);
  });
});
