import { pointOwners } from '../document/pointOwners';
import type { Site } from '../document/site';

/** The names that things of a site bear. */
export function takenNames(site: Site): Set<string> {
  return new Set(pointOwners(site).map((o) => o.name));
}

/** The wanted name, or the first of 'Pole 2', 'Pole 3' that is free, so that a tie names one thing. None stays none. */
export function freeName(taken: ReadonlySet<string>, wanted: string): string {
  if (wanted === '' || !taken.has(wanted)) return wanted;
  const base = wanted.replace(/ \d+$/, '');
  for (let n = 2; ; n++) {
    const name = `${base} ${n}`;
    if (!taken.has(name)) return name;
  }
}
