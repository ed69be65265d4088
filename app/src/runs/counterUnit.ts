import type { Units } from '@footmark/site';

/** What counters of a site count in: feet are decimal on a counter even where tapes are in feet and inches. */
export function counterUnit(units: Units): 'ft' | 'm' {
  return units.length === 'm' ? 'm' : 'ft';
}
