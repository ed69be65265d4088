import { type Derived, type PairSuggestion, type Site, setAside } from '@footmark/site';
import { edit } from '../session/siteSession';

/** What people set aside when two readings are not one thing. */
function nameOf(a: string, b: string): string {
  return `not-same/${[a, b].sort().join('/')}`;
}

/** Readings that may be one thing and of which nobody has said that they are not. */
export function openSuggestions(site: Site, { pairSuggestions }: Derived): readonly PairSuggestion[] {
  return pairSuggestions.filter(({ a, b }) => !site.setAside.includes(nameOf(a.reading.id, b.reading.id)));
}

/** Says that two readings are not one thing, so that nobody is asked again. */
export function sayNotSame(a: string, b: string, labels: string): void {
  edit(`Not the same: ${labels}`, (s) => setAside(s, { observation: nameOf(a, b), aside: true }));
}
