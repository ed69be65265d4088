import type { LevelSource, PipeLevel, Site, SlopeVerdict } from '@footmark/site';
import { atStart } from '../named';
import { featureInText, targetInText } from './thingName';

export const slopeVerdictNames: Record<SlopeVerdict, string> = {
  enough: 'Falls enough',
  'too-flat': 'Too flat',
  'cannot-tell': 'Levels cannot tell',
  'against-flow': 'Rises with the flow',
};

const measured: Record<PipeLevel['is'], string> = {
  invert: 'invert',
  'depth-to-invert': 'depth to the invert',
  'depth-to-top': 'depth to the top',
};

const fields = { invert: 'invert', depth: 'depth', riserDepth: 'riser' } as const;

export function levelSourceName(source: LevelSource, site: Site): string {
  return atStart(sourceInText(source, site));
}

function sourceInText(source: LevelSource, site: Site): string {
  switch (source.is) {
    case 'point':
      return `point ${source.vertex.toUpperCase()}, ${measured[source.measured]}`;
    case 'feature':
      return `${nameOf(source.feature, site)}, ${fields[source.field]}`;
    case 'locate':
      return `${nameOf(source.feature, site)}, depth of the sonde`;
    case 'join':
      return `joins ${targetInText({ kind: 'path', id: source.path }, site)}`;
  }
}

function nameOf(id: string, site: Site): string {
  const feature = site.features.find((f) => f.id === id);
  return feature === undefined ? id : featureInText(feature);
}
