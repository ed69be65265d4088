import { type Sheet, sheetPdf } from '@footmark/sheet';
import { ruleNames, ruleOf, type Site } from '@footmark/site';
import { en, es, sheetKinds, type Words } from '@footmark/words';
import { beforeAll, describe, expect, it } from 'vitest';
import { type PdfPage, readPdf, textOn } from './readPdf';
import { FONTS, SLOW, sample, sheet, sourceOf } from './sheets';

// A sheet in Spanish beside the same in English; what it says is taken out of its PDF by a reader that is not ours (pdfjs-dist).

/** Of every English sentence some, and of no Spanish one. */
const ENGLISH =
  /\b(?:the|of|from|with|is|are|and|this|that|what|where|not|see|depth|tape|sheet|o’clock|feet|pipe)\b/giu;

/** Measures with their unit, angles and stations; bare numbers also count pages, and 811 is called `in the United States`. */
const MEASURES =
  /(?!811\b)\b\d[\d,]*(?:\.\d+)?[½¼¾⅛⅜⅝⅞]?(?: ?(?:ft|in|m|mm|%)(?!\p{L})|[°′″])|\b\d\+\d{2,3}\b/gu;

const samples = (['rear-alley', 'front-terrace'] as const).flatMap((name) =>
  sheetKinds.map((kind) => ({ name, kind })),
);

/** With a pipe that is only planned, so that a new one has points to set out. */
function planned(site: Site): Site {
  return {
    ...site,
    paths: site.paths.map((p) => (p.id === 'p1' ? { ...p, state: 'proposed' as const } : p)),
  };
}

/** Every text that people typed. */
function textsIn(value: unknown): readonly string[] {
  if (typeof value === 'string') return value.length > 2 ? [value] : [];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(textsIn) : [];
}

/** Sources keep the title and the clause by which they are found. */
function sourcesOf(site: Site): readonly string[] {
  return ruleNames.flatMap((name) => textsIn(ruleOf(site, name).row));
}

/** A line may end after a hyphen. */
const unbroken = (pages: readonly PdfPage[]) => pages.map(textOn).join(' ').replaceAll('- ', '-');

const measuresOf = (text: string) => [...new Set(text.match(MEASURES) ?? [])].sort();

/** What stands on the pages themselves: in its windows a plan leaves labels off where there is no room for them. */
const besidePlans = ({ pages }: Sheet) =>
  pages.flatMap((page) => page.items.flatMap((item) => (item.is === 'text' ? [item.text] : []))).join(' ');

describe.each(samples)('a Spanish sheet of kind $kind of the $name', SLOW, ({ name, kind }) => {
  const site = kind === 'reroute' ? planned(sample(name)) : sample(name);
  const made = (words: Words) => sheet(sourceOf(site, words), { kind });
  const [spanish, english] = [made(es), made(en)];
  let pages: readonly PdfPage[];

  beforeAll(async () => {
    pages = await readPdf(sheetPdf(spanish, FONTS));
  }, SLOW.timeout);

  it('tells every measure that the English one tells, and no other', () => {
    const measures = measuresOf(besidePlans(spanish));
    expect(measures.length).toBeGreaterThan(10);
    expect(measures).toEqual(measuresOf(besidePlans(english)));
    expect(measuresOf(unbroken(pages))).toEqual(expect.arrayContaining(measures));
  });

  it('has no English but what people typed and the titles of sources', () => {
    const own = [...textsIn(site), ...sourcesOf(site)].toSorted((a, b) => b.length - a.length);
    const said = own.reduce((rest, text) => rest.replaceAll(text, ' '), unbroken(pages));
    expect(said.match(ENGLISH) ?? []).toEqual([]);
    expect(besidePlans(english).match(ENGLISH)?.length).toBeGreaterThan(10);
  });
});
