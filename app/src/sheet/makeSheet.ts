import regularUrl from '@expo-google-fonts/barlow-semi-condensed/500Medium/BarlowSemiCondensed_500Medium.ttf?url';
import boldUrl from '@expo-google-fonts/barlow-semi-condensed/600SemiBold/BarlowSemiCondensed_600SemiBold.ttf?url';
import { leastChoice, linkBytes, qrSymbols } from '@footmark/link';
import { type Sheet, type SheetFonts, sheetOf, sheetPdf } from '@footmark/sheet';
import type { Derived, RunsFit, Site } from '@footmark/site';
import { languages, type Words } from '@footmark/words';
import { diggingFrom } from '../dig/digging';
import { linkHead } from '../link/linkAddress';
import { today } from '../session/today';
import { type SheetAsk, usualPaper } from './sheetAsk';
import { sheetPictures } from './sheetPictures';

let fonts: Promise<SheetFonts> | null = null;

/** The lettering, fetched once. */
function sheetFonts(): Promise<SheetFonts> {
  fonts ??= Promise.all([bytesAt(regularUrl), bytesAt(boldUrl)]).then(([regular, bold]) => ({
    regular,
    bold,
  }));
  fonts.catch(() => {
    fonts = null; // the next try fetches anew
  });
  return fonts;
}

async function bytesAt(url: string): Promise<Uint8Array> {
  const answer = await fetch(url);
  if (!answer.ok) throw new Error(`${url}: ${answer.status}`);
  return new Uint8Array(await answer.arrayBuffer());
}

/** The sheet of a site as it is asked for; `too-many-sheets`: at that scale. */
export async function makeSheet(
  { site, derived, fit }: { readonly site: Site; readonly derived: Derived; readonly fit: RunsFit | null },
  ask: SheetAsk,
): Promise<Sheet | 'too-many-sheets'> {
  const words = languages.find((l) => l.language === ask.language) ?? languages[0];
  const lettering = await sheetFonts();
  const pictures = ask.kind === 'findings' ? await sheetPictures(site) : new Map();
  const made = sheetOf(
    { site, derived, fit, inTheWay: diggingFrom(site, fit), words },
    {
      kind: ask.kind,
      paper: { name: ask.paper ?? usualPaper(site.units.length !== 'm'), turned: ask.turned },
      scale: ask.scale,
      ink: ask.ink,
      date: today(),
      facts: {
        ...(ask.preparedBy === '' ? {} : { preparedBy: ask.preparedBy }),
        ...(ask.preparedFor === '' ? {} : { preparedFor: ask.preparedFor }),
        ...(ask.note === '' ? {} : { note: ask.note }),
      },
      qr: ask.withCode && ask.kind !== 'findings' ? codesOf(site, words) : [],
      pictures,
    },
    lettering,
  );
  return made.ok ? made.value : made.code;
}

export async function pdfOf(sheet: Sheet): Promise<Uint8Array<ArrayBuffer>> {
  return new Uint8Array(sheetPdf(sheet, await sheetFonts()));
}

/** So many codes on paper nobody scans one after the other. */
const MOST_CODES = 3;

/** The link to the site as codes; none where there would be too many. */
function codesOf(site: Site, words: Words) {
  const bytes = linkBytes(site, leastChoice);
  const drawn = bytes.ok ? qrSymbols(linkHead(), bytes.bytes) : null;
  if (!drawn?.ok || drawn.symbols.length > MOST_CODES) return [];
  return drawn.symbols.map(({ modules }, i, { length }) => ({
    modules,
    caption: length === 1 ? site.name : words.crew.codeText(i + 1, length),
  }));
}
