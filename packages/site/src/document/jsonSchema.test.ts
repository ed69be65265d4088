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
        if (!('additionalProperties' in value) || value.additionalProperties !== false) open.push(path);
      }
      for (const [key, inner] of Object.entries(value)) walk(inner, `${path}/${key}`);
    };
    walk(siteJsonSchema(), '');
    expect(open).toEqual([]);
  });
});
