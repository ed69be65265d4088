import type { Feature } from '../document/feature';
import type { ReadingRef } from '../document/readingRef';
import type { Site } from '../document/site';
import type { Pair } from '../document/visit';

/**
 * Frees pairs and locates from readings for which `gone` holds: pairs and pits go, the locates stay and lose the
 * name.
 */
export function releaseReadings(
  site: Site,
  gone: (ref: ReadingRef) => boolean,
): Pick<Site, 'features' | 'pairs' | 'different' | 'digging'> {
  const kept = (pairs: Pair[]) => {
    const left = pairs.filter(({ a, b }) => !gone(a) && !gone(b));
    return left.length === pairs.length ? pairs : left;
  };
  const features = site.features.map((f): Feature => {
    if (f.kind !== 'locate' || f.fields.reading === undefined || !gone(f.fields.reading)) return f;
    const { reading: _, ...fields } = f.fields;
    return { ...f, fields };
  });
  const digs = site.digging.digs.filter((dig) => dig.is !== 'pit' || !gone(dig.at));
  return {
    digging: digs.length === site.digging.digs.length ? site.digging : { ...site.digging, digs },
    pairs: kept(site.pairs),
    different: kept(site.different),
    features: features.every((f, i) => f === site.features[i]) ? site.features : features,
  };
}
