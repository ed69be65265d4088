import type { Site, Underlay } from '@footmark/site';
export function addUnderlay(site: Site, { underlay }: { underlay: Underlay }): Site {
  return { ...site, underlays: [...site.underlays, underlay] };
}
export function changeUnderlay(
  site: Site,
  { id, facts }: { id: string; facts: Partial<Omit<Underlay, 'id'>> },
): Site {
  return { ...site, underlays: site.underlays.map((u) => (u.id === id ? { ...u, ...facts } : u)) };
}
export function removeUnderlay(site: Site, { id }: { id: string }): Site {
  return { ...site, underlays: site.underlays.filter((u) => u.id !== id) };
}
