import { describe, expect, it } from 'vitest';
import { siteJsonSchema } from './jsonSchema';

describe('site.schema.json', () => {
  it('is the validator’s schema (if not: npx vitest run --config tests/vitest.config.ts packages/site -u)', async () => {
    const text = `${JSON.stringify(siteJsonSchema(), null, 2)}\n`;
    await expect(text).toMatchFileSnapshot('../../site.schema.json');
  });

  it('refuses properties that it does not know, in every record', () => {
    const open: string[] = [];
    const walk = (value: unknown, path: string): void => {
      if (typeof value !== 'object' || value === null) return;
      if ('type' in value && value.type === 'object') {
        const named = 'propertyNames' in value && hasWords(value.propertyNames);
        const closed = 'additionalProperties' in value && value.additionalProperties === false;
        if (!named && !closed) open.push(path);
      }
      for (const [key, inner] of Object.entries(value)) walk(inner, `${path}/${key}`);
    };
    walk(siteJsonSchema(), '');
    expect(open).toEqual([]);
  });
});

/** A schema of names that lists them all. */
function hasWords(schema: unknown): boolean {
  return typeof schema === 'object' && schema !== null && 'enum' in schema && Array.isArray(schema.enum);
}
