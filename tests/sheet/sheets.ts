import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { standsInTheWay } from '@footmark/dig';
import { type Sheet, type SheetFonts, type SheetOptions, type SheetSource, sheetOf } from '@footmark/sheet';
import { derive, fitRuns, openSite, type Site } from '@footmark/site';
import { en, type Words } from '@footmark/words';

// Sheets of the invented sample sites, with the fonts that the app ships.

export const DAY = '2026-05-01';

const require = createRequire(import.meta.url);

const font = (path: string) => new Uint8Array(readFileSync(path));

export const FONTS: SheetFonts = {
  regular: font(
    require.resolve('@expo-google-fonts/barlow-semi-condensed/500Medium/BarlowSemiCondensed_500Medium.ttf'),
  ),
  bold: font(
    require.resolve(
      '@expo-google-fonts/barlow-semi-condensed/600SemiBold/BarlowSemiCondensed_600SemiBold.ttf',
    ),
  ),
};

export function sample(name: 'rear-alley' | 'front-terrace'): Site {
  const file = new URL(`../../packages/site/samples/${name}.json`, import.meta.url);
  const opened = openSite(readFileSync(file, 'utf8'));
  if (!opened.ok) throw new Error(JSON.stringify(opened.failure));
  return opened.site;
}

export function sourceOf(site: Site, words: Words = en): SheetSource {
  const derived = derive(site);
  const fit = fitRuns(site, derived);
  return { site, derived, fit, inTheWay: standsInTheWay(site, derived, fit, DAY), words };
}

export const USUAL: SheetOptions = {
  kind: 'mark-out',
  paper: { name: 'letter', turned: false },
  scale: 'fit',
  ink: 'colour',
  date: DAY,
};

export function sheet(source: SheetSource, options: Partial<SheetOptions> = {}): Sheet {
  const made = sheetOf(source, { ...USUAL, ...options }, FONTS);
  if (!made.ok) throw new Error(made.code);
  return made.value;
}

/** Several whole sheets in one test, on a machine that may be busy. */
export const SLOW = { timeout: 60_000 };
