import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { siteJsonSchema } from './jsonSchema';
import { migrations } from './migrations';
import { openSite } from './openSite';
import { SITE_VERSION } from './site';

const FROZEN = new URL('./frozen/', import.meta.url);
const versions = Array.from({ length: SITE_VERSION }, (_, i) => i + 1);

/** `v1.json` has every record; what cannot stand in one site together is in files such as `v1-north-compass.json`. */
const files = readdirSync(FROZEN).sort();

function versionOf(file: string): number {
  return Number(/^v(\d+)(-[a-z-]+)?\.json$/.exec(file)?.[1]);
}

function frozen(file: string): string {
  return readFileSync(new URL(file, FROZEN), 'utf8');
}

describe('every version of the site file', () => {
  it.each(versions)('version %i has a frozen sample', (version) => {
    expect(existsSync(new URL(`v${version}.json`, FROZEN)), `frozen/v${version}.json is missing`).toBe(true);
  });

  it.each(files)('%s opens', (file) => {
    const version = versionOf(file);
    const opened = openSite(frozen(file));
    if (!opened.ok) expect.fail(`${file}: ${JSON.stringify(opened.failure)}`);
    expect(opened.migratedFrom).toBe(version === SITE_VERSION ? null : version);
    expect(opened.site.version).toBe(SITE_VERSION);
  });

  it('has a migration from each version before this one, and none from this one', () => {
    expect(Object.keys(migrations).map(Number)).toEqual(versions.slice(0, -1));
  });

  it('has no frozen sample of a version to come', () => {
    expect(files.filter((file) => !versions.includes(versionOf(file)))).toEqual([]);
  });

  it('is read by migrations that import nothing from live code', () => {
    const source = readFileSync(new URL('./migrations.ts', import.meta.url), 'utf8');
    expect(source).not.toMatch(/^\s*(import|export .* from)\b/m);
  });

  it('is sampled whole: the newest samples use every property and every word of the schema', () => {
    const names = new Set<string>();
    const words = new Set<string>();
    const walk = (value: unknown): void => {
      if (typeof value === 'string') words.add(value);
      if (typeof value !== 'object' || value === null) return;
      for (const [key, inner] of Object.entries(value)) {
        if (!Array.isArray(value)) names.add(key);
        walk(inner);
      }
    };
    for (const file of files) if (versionOf(file) === SITE_VERSION) walk(JSON.parse(frozen(file)));
    const { properties, constants } = namesIn(siteJsonSchema());
    expect([...properties].filter((name) => !names.has(name))).toEqual([]);
    expect([...constants].filter((w) => !words.has(w) && !names.has(w))).toEqual([]);
  });
});

/** Property names and constant words anywhere in a schema. */
function namesIn(schema: unknown): { properties: Set<string>; constants: Set<string> } {
  const found = { properties: new Set<string>(), constants: new Set<string>() };
  const walk = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return;
    if ('properties' in value && typeof value.properties === 'object') {
      for (const name of Object.keys(value.properties ?? {})) found.properties.add(name);
    }
    if ('const' in value && typeof value.const === 'string') found.constants.add(value.const);
    if ('enum' in value && Array.isArray(value.enum)) {
      for (const word of value.enum) if (typeof word === 'string') found.constants.add(word);
    }
    for (const inner of Object.values(value)) walk(inner);
  };
  walk(schema);
  return found;
}
