import { readFileSync } from 'node:fs';
import { type Derived, derive, openSite, type Site } from '@footmark/site';

/** The invented sample site, opened and computed; `change` alters its JSON before it is opened. */
export function rearAlley(change: (site: Site) => void = () => {}): {
  readonly site: Site;
  readonly derived: Derived;
} {
  const file = new URL('../../packages/site/samples/rear-alley.json', import.meta.url);
  const raw = JSON.parse(readFileSync(file, 'utf8')) as Site; // openSite checks it below
  change(raw);
  const opened = openSite(JSON.stringify(raw));
  if (!opened.ok) throw new Error(JSON.stringify(opened.failure));
  return { site: opened.site, derived: derive(opened.site) };
}
