import { readFileSync } from 'node:fs';
import { SITE_VERSION, siteJsonSchema } from '@footmark/site';
import { describe, expect, it } from 'vitest';

const readme = readFileSync(new URL('../../packages/site/README.md', import.meta.url), 'utf8');

/** Every word between backticks. */
const written = new Set(
  [...readme.matchAll(/`([^`]+)`/g)].flatMap(([, code]) => (code ?? '').match(/[\w-]+/g) ?? []),
);

describe('the description of the site file', () => {
  const properties = new Set<string>();
  const words = new Set<string>();
  collect(siteJsonSchema());

  it.each([...properties])('tells of the property %s', (name) => {
    expect(written.has(name), `packages/site/README.md does not name \`${name}\``).toBe(true);
  });

  it('tells of every kind and choice', () => {
    expect(words.size).toBeGreaterThan(80);
    expect([...words].filter((word) => !written.has(word))).toEqual([]);
  });

  it('is of this version', () => {
    expect(readme).toMatch(new RegExp(`^\\| \`version\` *\\| \`${SITE_VERSION}\``, 'm'));
  });

  function collect(schema: unknown): void {
    if (typeof schema !== 'object' || schema === null) return;
    for (const [key, inner] of Object.entries(schema)) {
      if (key === 'properties') for (const name of Object.keys(inner)) properties.add(name);
      if (key === 'const' && typeof inner === 'string') words.add(inner);
      if (key === 'enum' && Array.isArray(inner))
        for (const word of inner) if (typeof word === 'string') words.add(word);
      collect(inner);
    }
  }
});
