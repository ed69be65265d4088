import { readFile } from 'node:fs/promises';
import type { Download } from '@playwright/test';
import { type Derived, derive, openSite, type Site } from '../../packages/site/src/index';

/** What a download holds as text. */
export async function textOf(download: Download): Promise<string> {
  return await readFile(await download.path(), 'utf8');
}

/** A downloaded site file, opened by the same rules as the app's own; throws with the places that are wrong. */
export function siteIn(text: string): Site {
  const opened = openSite(text);
  if (!opened.ok) throw new Error(`the site file does not open: ${JSON.stringify(opened.failure)}`);
  return opened.site;
}

/** What follows from a site. */
export function derivedOf(site: Site): Derived {
  return derive(site);
}

/** The one feature of a name. */
export function featureNamed(site: Site, name: string): Site['features'][number] {
  const found = site.features.filter((f) => f.name === name);
  const [only] = found;
  if (only === undefined || found.length > 1) throw new Error(`${found.length} features are called ${name}`);
  return only;
}

/** Where a point of the site lies, in metres. */
export function placeOf(site: Site, name: string, point = 'a'): { readonly x: number; readonly y: number } {
  const owner = site.features.find((f) => f.name === name) ?? site.paths.find((p) => p.name === name);
  const found = derive(site).points.get(`${owner?.id}/${point}`);
  if (found === undefined) throw new Error(`${name} ${point} has no place`);
  return found.at;
}
