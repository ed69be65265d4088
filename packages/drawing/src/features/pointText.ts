import { type Feature, formatDiameter, formatLength, type Site } from '@footmark/site';

/** What is written beside a point: its name, and what a plan gives with it (a trunk's size, a level, a note's text). */
export function pointText(feature: Feature, units: Site['units']): string {
  switch (feature.kind) {
    case 'tree': {
      const { trunkDiameter, species } = feature.fields;
      const size = trunkDiameter === undefined ? '' : formatDiameter(trunkDiameter, units.diameter);
      return joined(size, feature.name || species);
    }
    case 'benchmark':
    case 'spot-level': {
      const { level } = feature.fields;
      // levels are decimal also where lengths are in feet and inches (common practice, no source)
      const style = units.length === 'm' ? 'm' : 'ft';
      return joined(feature.name, level === undefined ? '' : formatLength(level, style));
    }
    case 'reference-point':
      return joined(feature.name || feature.fields.what);
    case 'photo-point':
    case 'note':
      return joined(feature.fields.text || feature.name);
    default:
      return feature.name;
  }
}

function joined(...texts: readonly (string | undefined)[]): string {
  return texts.filter((t) => t !== undefined && t !== '').join(' ');
}
