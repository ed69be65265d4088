import type { LevelSource, PathProfile, PipeLevel, Site, SlopeVerdict } from '@footmark/site';
import { slopeText } from '../measureText';
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

/** What the heights of a profile are counted from, and what they come to from end to end. */
export function profileHeightsText({ heights, whole, unused }: PathProfile): string {
  return [
    heights === 'below-ground'
      ? 'No level is known: heights are depths below a ground taken as even.'
      : 'Levels above the datum of the site.',
    ...(heights === 'below-ground' || whole === null
      ? []
      : [`From the first to the last the pipe falls ${slopeText(whole.slope)}.`]),
    'What stands after ± holds 95 of 100 times.',
    ...(unused.length === 0
      ? []
      : ['Some depths are left aside: no level of the ground is known near them.']),
  ].join(' ');
}
