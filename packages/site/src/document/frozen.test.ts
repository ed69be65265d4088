import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { observationKindIds } from '../kinds/observationKinds';
import { siteJsonSchema } from './jsonSchema';
import { migrations } from './migrations';
import { openSite } from './openSite';
import { pipeMaterials } from './path';
import { SITE_VERSION } from './site';

const FROZEN = new URL('./frozen/', import.meta.url);
const versions = Array.from({ length: SITE_VERSION }, (_, i) => i + 1);

function frozen(version: number): string {
  return readFileSync(new URL(`v${version}.json`, FROZEN), 'utf8');
}

describe('every version of the site file', () => {
  it.each(versions)('version %i has a frozen sample, which opens', (version) => {
    expect(existsSync(new URL(`v${version}.json`, FROZEN)), `frozen/v${version}.json is missing`).toBe(true);
    const opened = openSite(frozen(version));
    if (!opened.ok) expect.fail(`v${version}: ${JSON.stringify(opened.failure)}`);
    expect(opened.migratedFrom).toBe(version === SITE_VERSION ? null : version);
    expect(opened.site.version).toBe(SITE_VERSION);
  });

  it('has a migration from each version before this one, and none from this one', () => {
    expect(Object.keys(migrations).map(Number)).toEqual(versions.slice(0, -1));
  });

  it('has no frozen sample of a version to come', () => {
    expect(readdirSync(FROZEN).sort()).toEqual(versions.map((v) => `v${v}.json`).sort());
  });

  it('is read by migrations that import nothing from live code', () => {
    const source = readFileSync(new URL('./migrations.ts', import.meta.url), 'utf8');
    expect(source).not.toMatch(/^\s*(import|export .* from)\b/m);
  });

  it('is sampled whole: the newest sample uses every property and every kind of the schema', () => {
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
    walk(JSON.parse(frozen(SITE_VERSION)));
    const { properties, constants } = namesIn(siteJsonSchema());
    expect([...properties].filter((name) => !names.has(name))).toEqual([]);
    expect([...constants, ...observationKindIds, ...pipeMaterials].filter((w) => !words.has(w))).toEqual([]);
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
    for (const inner of Object.values(value)) walk(inner);
  };
  walk(schema);
  return found;
}
