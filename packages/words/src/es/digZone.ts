import type { DigSeverity, HoldingRoots } from '@footmark/dig';
import type { TreeRuleId } from '@footmark/site';

/** What a rule calls the ground round a tree in which roots matter, with its article. */
export const zoneOfRule: Record<TreeRuleId, string> = {
  'bs-5837': 'el área de protección de raíces',
  'as-4970': 'la zona de protección del árbol',
  'critical-root-radius': 'la zona crítica de raíces',
  'tolerance-and-age': 'la zona de raíces por tolerancia y edad',
  'six-diameters': 'la zona de seis diámetros del tronco',
  'bore-distance': 'la zona donde se perfora en vez de zanjar,',
};

/** What the roots that hold a tree up are told by. */
export const holdingNames: Record<HoldingRoots['is'], string> = {
  'structural-root-zone': 'Raíces que lo sostienen, AS 4970',
  stability: 'Raíces que lo sostienen, por diámetros del tronco',
};

/** Headings over what is found, the most pressing first. */
export const digSeverityNames: Record<DigSeverity, string> = {
  must: 'Resolver antes de excavar',
  should: 'Revisar antes de excavar',
  note: 'Conviene saberlo',
};
