import type { DigSeverity, HoldingRoots } from '@footmark/dig';
import type { TreeRuleId } from '@footmark/site';

/** What a rule calls the ground round a tree in which roots matter. */
export const zoneOfRule: Record<TreeRuleId, string> = {
  'bs-5837': 'root protection area',
  'as-4970': 'tree protection zone',
  'critical-root-radius': 'critical root zone',
  'tolerance-and-age': 'root zone by tolerance and age',
  'six-diameters': 'zone of six trunk diameters',
  'bore-distance': 'zone in which to bore, not trench,',
};

/** What the roots that hold a tree up are told by. */
export const holdingNames: Record<HoldingRoots['is'], string> = {
  'structural-root-zone': 'Roots that hold it up, AS 4970',
  stability: 'Roots that hold it up, by trunk diameters',
};

/** Headings over what is found, the most pressing first. */
export const digSeverityNames: Record<DigSeverity, string> = {
  must: 'Must be settled before the dig',
  should: 'Look at before the dig',
  note: 'Worth knowing',
};
