import { readFileSync } from 'node:fs';
import { type Derived, derive, openSite, type Site } from '@footmark/site';

/** A sample site, opened and computed. */
export type Sample = { readonly site: Site; readonly derived: Derived };

/** The invented sample site in feet, which is nowhere on the earth; `change` alters its JSON before it is opened. */
export function rearAlley(change: (site: Site) => void = () => {}): Sample {
  return sample('rear-alley', change);
}

/** The invented sample site in metres, with two control points. */
export function frontTerrace(change: (site: Site) => void = () => {}): Sample {
  return sample('front-terrace', change);
}

function sample(name: string, change: (site: Site) => void): Sample {
  const file = new URL(`../../packages/site/samples/${name}.json`, import.meta.url);
  const raw = JSON.parse(readFileSync(file, 'utf8')) as Site; // openSite checks it below
  change(raw);
  const opened = openSite(JSON.stringify(raw));
  if (!opened.ok) throw new Error(JSON.stringify(opened.failure));
  return { site: opened.site, derived: derive(opened.site) };
}
