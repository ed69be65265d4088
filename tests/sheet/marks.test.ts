import { sheetPdf } from '@footmark/sheet';
import { en, es, lengthText } from '@footmark/words';
import { describe, expect, it } from 'vitest';
import { type PdfText, readPdf, textOn } from './readPdf';
import { FONTS, SLOW, sample, sheet, sourceOf } from './sheets';

// What a crew reads, taken out of the PDF by a reader that is not ours (pdfjs-dist).

/** What stands in the row that begins with a label in the table's first column, down to the next one. */
function rowOf(label: string, texts: readonly PdfText[]): string {
  const left = Math.min(...texts.map((t) => t.x));
  const heads = texts.filter((t) => Math.abs(t.x - left) < 0.5 && t.size > 11.5).sort((a, b) => b.y - a.y);
  const at = heads.findIndex((t) => t.text === label);
  const [here, next] = [heads[at], heads[at + 1]];
  if (here === undefined) return '';
  return texts
    .filter((t) => t.y <= here.y + 2 && t.y > (next?.y ?? 0) + 2)
    .map((t) => t.text)
    .join(' ');
}

const samples = (['rear-alley', 'front-terrace'] as const).flatMap((name) =>
  [en, es].map((words) => ({ name, words, language: words.language })),
);

describe.each(samples)('the mark-out of the $name in $language', SLOW, ({ name, words }) => {
  const source = sourceOf(sample(name), words);
  const { site, derived } = source;
  const reading = readPdf(sheetPdf(sheet(source), FONTS));

  it('has for every mark its label, its tapes with where they begin, its side and its station in one row', async () => {
    const pages = await reading;
    for (const { label, place } of derived.marks) {
      const row = pages.map((p) => rowOf(label, p.texts)).find((r) => r !== '') ?? '';
      expect(row, label).toContain(label);
      if (place === null) continue;
      expect(row, label).toContain(lengthText(place.station, site.units));
      const ties = (place.paint ?? place).ties;
      if (ties === null) continue;
      for (const tie of [...ties.pair, ...(ties.check === null ? [] : [ties.check])]) {
        expect(row, label).toContain(lengthText(tie.distance, site.units));
        expect(row.replace(/\s+/g, ' '), label).toContain(words.referenceName(tie.from, site).split(' ')[0]);
      }
      expect(row, label).toContain(words.sheet.sideName(ties.side));
    }
  });

  it('names on its plan or in a detail of it every mark, and every corner that a tape begins at', () => {
    const made = sheet(source);
    const windows = made.pages.flatMap((p) => p.items.flatMap((i) => (i.is === 'window' ? [i] : [])));
    const texts = windows.flatMap((w) => w.items.flatMap((i) => (i.is === 'text' ? [i.text] : [])));
    const words_ = texts.flatMap((t) => t.split(/[ ,]+/));
    for (const { label, place } of derived.marks) if (place !== null) expect(words_, label).toContain(label);
    for (const { place } of derived.marks)
      for (const tie of place?.ties?.pair ?? [])
        if (tie.from.corner !== null) expect(words_, tie.from.key).toContain(tie.from.corner);
  });

  it('says who must be called before anyone digs on its first page, and all cautions somewhere', async () => {
    const pages = await reading;
    const [first] = pages;
    expect(first === undefined ? '' : textOn(first)).toContain(
      words.cautionText('call-before-digging').title,
    );
    const all = pages.map(textOn).join(' ');
    for (const code of ['hand-dig', 'private-lines', 'sewer-gas', 'trench-safety', 'people-decide'] as const)
      expect(all).toContain(words.cautionText(code).title);
  });

  it('counts its sheets', async () => {
    const pages = await reading;
    for (const [i, page] of pages.entries())
      expect(textOn(page)).toContain(words.sheet.sheetOf(i + 1, pages.length));
  });
});

describe('the one-call ticket', SLOW, () => {
  it('stands on the first page with its number and until when its marks hold', async () => {
    const site = sample('rear-alley');
    const oneCall = {
      ticket: 'B-26-118',
      called: '2026-04-20',
      validFrom: '2026-04-23',
      validUntil: '2026-05-08',
    };
    const pages = await readPdf(
      sheetPdf(sheet(sourceOf({ ...site, digging: { ...site.digging, oneCall } })), FONTS),
    );
    const [first] = pages;
    const text = first === undefined ? '' : textOn(first);
    expect(text).toContain('B-26-118');
    expect(text).toContain('May 8, 2026');
  });
});
