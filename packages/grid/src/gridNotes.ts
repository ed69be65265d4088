import type { DerivedFrame, EarthPoint } from '@footmark/site';
import { isInBox } from './geoBox';
import type { GridFactors } from './gridFactors';
import type { Grid } from './openGrid';

/** What must be said beside coordinates in a grid, as codes: the sentences are those of a language. */
export type GridNote =
  | { readonly code: 'datum-as-wgs84' } // WGS 84 and NAD 83 are taken as one: 1–2 m apart
  | { readonly code: 'datum-shifted' } // by the few parameters of a definition: metres
  | { readonly code: 'outside-area' }
  | { readonly code: 'not-conformal' }
  | { readonly code: 'height-not-given' }
  | { readonly code: 'north-not-known' } // the plan's +y is taken for north
  | { readonly code: 'ground-is-not-grid'; readonly partsPerMillion: number };

/** A difference of ground and grid from here on (2 mm in 20 m) is told. */
const TOLD_PPM = 100;

/** The notes on a site's coordinates in a grid; `place` is somewhere on the site. */
export function gridNotes(
  { system, projection }: Grid,
  place: EarthPoint,
  frame: Pick<DerivedFrame, 'known'>,
  factors: GridFactors,
): readonly GridNote[] {
  const notes: GridNote[] = [];
  if (projection.datum === 'shifted') notes.push({ code: 'datum-shifted' });
  else if (system.datum !== 'WGS84') notes.push({ code: 'datum-as-wgs84' });
  if (system.area !== null && !isInBox(system.area, place)) notes.push({ code: 'outside-area' });
  if (!factors.conformal) notes.push({ code: 'not-conformal' });
  if (!frame.known) notes.push({ code: 'north-not-known' });
  if (factors.combined === null) notes.push({ code: 'height-not-given' });
  const partsPerMillion = ((factors.combined ?? factors.pointScale) - 1) * 1e6;
  if (Math.abs(partsPerMillion) >= TOLD_PPM) notes.push({ code: 'ground-is-not-grid', partsPerMillion });
  return notes;
}
