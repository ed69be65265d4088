import type { Site } from '@footmark/site';

/** Hexadecimal digits that are kept: 64 bits tell the states of one site apart. */
const DIGITS = 16;

/** The first 64 bits of the SHA-256 of a site's JSON, its properties in the order of their names, so that two devices agree. */
export async function siteHash(site: Site): Promise<string> {
  const bytes = new TextEncoder().encode(JSON.stringify(site, sorted));
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return [...digest]
    .map((byte) => byte.toString(16).padStart(2, '0'))
    .join('')
    .slice(0, DIGITS);
}

function sorted(_: string, value: unknown): unknown {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return value;
  return Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)));
}
