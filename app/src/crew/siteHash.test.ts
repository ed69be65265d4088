import { createHash } from 'node:crypto';
import { newSite } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { siteHash } from './siteHash';

const site = newSite({
  id: 's1',
  name: 'Yard',
  createdAt: '2026-05-20T12:00:00Z',
  units: { length: 'ft', diameter: 'in', direction: 'bearing' },
});

describe('the hash of a site', () => {
  it('is the beginning of the SHA-256 of its JSON (FIPS 180-4, by Node’s own)', async () => {
    // written by hand with its names in order
    const plain = { b: 1, a: [2, { d: 3, c: 4 }] };
    const text = '{"a":[2,{"c":4,"d":3}],"b":1}';
    const expected = createHash('sha256').update(text).digest('hex').slice(0, 16);
    expect(await siteHash(plain as unknown as typeof site)).toBe(expected); // any plain value has a hash
  });

  it('is the same whatever order the properties come in, and another for another site', async () => {
    const turned = Object.fromEntries(Object.entries(site).reverse()) as typeof site; // the same properties
    expect(await siteHash(turned)).toBe(await siteHash(site));
    expect(await siteHash({ ...site, name: 'Yard 2' })).not.toBe(await siteHash(site));
    expect(await siteHash(site)).toMatch(/^[0-9a-f]{16}$/);
  });
});
