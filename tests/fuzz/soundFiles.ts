import { draw } from '@footmark/drawing';
import { siteDxf, siteGeoJson, siteKml, sitePoints } from '@footmark/exchange';
import { derive, fitRuns } from '@footmark/site';
import { en } from '@footmark/words';
import { bytesOf } from './reader';
import { yardOnTheEarth } from './soundSites';

function must<T>(result: { ok: true; value: T } | { ok: false; code: string }): T {
  if (!result.ok) throw new Error(result.code);
  return result.value;
}

/** The invented yard as each format that the program itself writes. Its projection has to be loaded before. */
export function ownFile(format: 'geojson' | 'kml' | 'dxf' | 'points'): Uint8Array {
  const site = yardOnTheEarth();
  const derived = derive(site);
  const coordinates = { is: 'site' } as const;
  switch (format) {
    case 'geojson':
      return bytesOf(must(siteGeoJson(site, derived, fitRuns(site, derived), en)));
    case 'kml':
      return bytesOf(must(siteKml(site, derived, fitRuns(site, derived), en)));
    case 'dxf':
      return bytesOf(
        must(siteDxf(site, derived, draw(site, derived), en, { coordinates, scaleDenominator: 100 })),
      );
    case 'points':
      return bytesOf(must(sitePoints(site, derived, en, coordinates)));
  }
}
