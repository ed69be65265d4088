import { readFileSync } from 'node:fs';
import { type Encoded, type LinkChoice, linkFragment } from '@footmark/link';
import { openSite, type Site } from '@footmark/site';

/** The bytes of what was encoded; throws when it was not. */
export function bytesOf(encoded: Encoded): Uint8Array {
  if (!encoded.ok) throw new Error(encoded.failure.code);
  return encoded.bytes;
}

/** What stands behind the `#` of a link to a site. */
export function fragmentOf(site: Site, choice: LinkChoice): string {
  const made = linkFragment(site, choice);
  if (!made.ok) throw new Error(made.failure.code);
  return made.fragment;
}

/** The invented sample sites by name. */
export const sampleNames = ['rear-alley', 'front-terrace'] as const;

export function sampleSite(name: string): Site {
  return siteAt(new URL(`../../packages/site/samples/${name}.json`, import.meta.url));
}

/** A site of everything that a file of version 2 can hold. */
export function fullSite(): Site {
  return siteAt(new URL('../../packages/site/src/document/frozen/v2.json', import.meta.url));
}

function siteAt(file: URL): Site {
  const opened = openSite(readFileSync(file, 'utf8'));
  if (!opened.ok) throw new Error(JSON.stringify(opened.failure));
  return opened.site;
}

/** The site with names as the app gives them, and with places by eye as a finger leaves them: what a sample would be, had it been drawn. */
export function asDrawn(site: Site, random: () => number): Site {
  const names = new Map<string, string>();
  const hex = () => Math.floor(random() * 16).toString(16);
  const text = JSON.stringify(site).replace(/"([a-z]\d{1,2})"/g, (_, id: string) => {
    const name = names.get(id) ?? id.charAt(0) + Array.from({ length: 12 }, hex).join('');
    names.set(id, name);
    return JSON.stringify(name);
  });
  const opened = openSite(
    text.replace(/"by":"finger","x":([^,]+),"y":([^}]+)/g, (_, x: string, y: string) => {
      return `"by":"finger","x":${Number(x) + random() / 100},"y":${Number(y) + random() / 100}`;
    }),
  );
  if (!opened.ok) throw new Error(JSON.stringify(opened.failure));
  return opened.site;
}
