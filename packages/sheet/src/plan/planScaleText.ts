import type { SheetSource } from '../setting';
import { feetToAnInch } from './scales';

/** A scale as the site's people say it: `1 in = 10 ft`, `1:100`. */
export function planScaleText(
  denominator: number,
  { words, site }: Pick<SheetSource, 'words' | 'site'>,
): string {
  const feet = site.units.length === 'm' ? null : feetToAnInch(denominator);
  return words.sheet.scaleText(denominator, feet);
}
