import {
  type Feature,
  formatLength,
  type KnownLength,
  type Reading,
  type Run,
  type Site,
  type Units,
} from '@footmark/site';

/** Scales are told to a few parts in ten thousand. */
const SCALE_DECIMALS = 4;

/** A reading with its run, by the reading's id. */
export function readingOf(id: string, site: Site): { readonly run: Run; readonly reading: Reading } | null {
  for (const run of site.runs) {
    const reading = run.readings.find((r) => r.id === id);
    if (reading !== undefined) return { run, reading };
  }
  return null;
}

/** What is painted for a reading, such as `A7`; its id where it is not there any more. */
export function markLabel(reading: string, site: Site): string {
  const found = readingOf(reading, site);
  return found === null ? reading : `${found.run.letter}${found.reading.number}`;
}

/** The reading that a locate belongs to. */
export function readingOfLocate(feature: Feature): string | null {
  return feature.kind === 'locate' ? (feature.fields.reading?.reading ?? null) : null;
}

/** How a locate was found, where that tells it from another of its reading. */
export function tellingMethod(locate: Feature, site: Site) {
  const reading = readingOfLocate(locate);
  const others = site.features.some((f) => f !== locate && readingOfLocate(f) === reading);
  return others && locate.kind === 'locate' ? locate.fields.method : undefined;
}

export function knownLengthOf(
  tag: { readonly path: string; readonly length: string },
  site: Site,
): KnownLength | undefined {
  return site.paths.find((p) => p.id === tag.path)?.knownLengths?.find((k) => k.id === tag.length);
}

/** What a counter would have to show: to its tenths of feet, or to centimetres. */
export function countedText(metres: number, { length }: Pick<Units, 'length'>): string {
  return length === 'm'
    ? formatLength(metres, 'm', { decimals: 2 })
    : formatLength(metres, 'ft', { decimals: 1 });
}

export function scaleText(scale: number): string {
  return String(Number(scale.toFixed(SCALE_DECIMALS)));
}
