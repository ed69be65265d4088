import type { MarkState, ZoneSource } from '@footmark/site';

/** From what a search zone's size comes. */
export const zoneSourceNames: Record<ZoneSource, string> = {
  counter: 'Reading the counter',
  zero: 'The zero',
  scale: 'The counter’s scale',
  riser: 'The riser',
  path: 'The line as drawn',
  locate: 'The locates',
  pair: 'What was seen from both ends',
  known: 'What is known of the pipe',
};

/** How far a mark has come. */
export const markStateNames: Record<MarkState, string> = {
  computed: 'Computed',
  located: 'Located',
  painted: 'Painted',
  flagged: 'Flagged',
  dug: 'Dug',
  found: 'Found',
};
