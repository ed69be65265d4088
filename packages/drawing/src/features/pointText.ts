import { type Feature, formatDiameter, formatLength, type ReadingRef, type Site } from '@footmark/site';
import type { DrawingWords } from '../drawOptions';

/**
 * What is written beside a point: its name, and what a plan gives with it (a trunk's size, a level, the label of the reading that a locate
 * belongs to, a note's text). `off`: metres that a locate is said to be off the computed place; null to say nothing of it.
 */
export function pointText(feature: Feature, site: Site, words: DrawingWords, off: number | null): string {
  const { units } = site;
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
    case 'locate': {
      const label = readingLabel(feature.fields.reading, site);
      return joined(label && (words.located?.(label, off, units) ?? label), feature.name);
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

function readingLabel(of: ReadingRef | undefined, { runs }: Site): string {
  const run = runs.find((r) => r.id === of?.run);
  const reading = run?.readings.find((r) => r.id === of?.reading);
  return run === undefined || reading === undefined ? '' : `${run.letter}${reading.number}`;
}

function joined(...texts: readonly (string | undefined)[]): string {
  return texts.filter((t) => t !== undefined && t !== '').join(' ');
}
