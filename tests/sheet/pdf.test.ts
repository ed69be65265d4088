import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Picture, sheetPdf, sheetSvg } from '@footmark/sheet';
import { sheetKinds } from '@footmark/words';
import { describe, expect, it } from 'vitest';
import { readPdf, textOn } from './readPdf';
import { FONTS, SLOW, sample, sheet, sourceOf } from './sheets';

const source = sourceOf(sample('rear-alley'));

describe('a PDF', SLOW, () => {
  it.each(sheetKinds)('of kind %s is the same bytes for the same sheet', (kind) => {
    const one = sheetPdf(sheet(source, { kind }), FONTS);
    const again = sheetPdf(sheet(sourceOf(sample('rear-alley')), { kind }), FONTS);
    expect(Buffer.compare(one, again)).toBe(0);
  });

  it('says its title and the site’s address in text that can be taken out', async () => {
    const [page] = await readPdf(sheetPdf(sheet(source), FONTS));
    const text = page === undefined ? '' : textOn(page);
    expect(text).toContain('Rear-alley lateral');
    expect(text).toContain('214 Larkspur Row, Quillmere');
    expect(text).toContain('May 1, 2026');
  });

  it('shows a picture beside what was seen, and does without one that is not there', async () => {
    const [run] = source.site.runs;
    const [bad] = run?.readings.filter((r) => r.seen === 'roots') ?? [];
    const site = {
      ...source.site,
      runs: source.site.runs.map((r) => ({
        ...r,
        readings: r.readings.map((reading) =>
          reading.id === bad?.id ? { ...reading, photo: 'p1' } : { ...reading, photo: 'p2' },
        ),
      })),
    };
    const fixture = (name: string) =>
      new Uint8Array(readFileSync(new URL(`../../app/src/pictures/fixtures/${name}`, import.meta.url)));
    const images = async (pictures: ReadonlyMap<string, Picture>) => {
      const pages = await readPdf(sheetPdf(sheet(sourceOf(site), { kind: 'findings', pictures }), FONTS));
      return pages.reduce((sum, p) => sum + p.images, 0);
    };
    const jpeg: Picture = {
      bytes: fixture('7x5-baseline.jpg'),
      width: 7,
      height: 5,
      mediaType: 'image/jpeg',
    };
    const png: Picture = { bytes: fixture('7x5.png'), width: 7, height: 5, mediaType: 'image/png' };
    expect(await images(new Map())).toBe(0);
    expect(await images(new Map([['p1', jpeg]]))).toBe(1);
    expect(await images(new Map([['p1', png]]))).toBe(1);
  });
});

const isThere = (tool: string) => spawnSync(tool, ['-v']).error === undefined;
const HAS_POPPLER = isThere('pdfinfo');

// A second reader (poppler-utils); without it these are skipped.
describe.skipIf(!HAS_POPPLER)('poppler (skipped where poppler-utils is not installed)', SLOW, () => {
  const folder = mkdtempSync(join(tmpdir(), 'footmark-sheet-'));
  const file = join(folder, 'sheet.pdf');
  writeFileSync(file, sheetPdf(sheet(source), FONTS));
  const run = (tool: string, ...args: readonly string[]) => execFileSync(tool, args, { encoding: 'utf8' });

  it('finds the page’s size, and fonts that are embedded with their letters', () => {
    expect(run('pdfinfo', file)).toMatch(/Page size:\s+612 x 792 pts \(letter\)/);
    const fonts = run('pdffonts', file)
      .split('\n')
      .slice(2)
      .filter((l) => l !== '');
    expect(fonts.length).toBe(2);
    for (const font of fonts) expect(font).toMatch(/CID TrueType\s+Identity-H\s+yes/);
  });

  it('takes every mark’s label out of it', () => {
    const text = run('pdftotext', '-layout', file, '-');
    for (const { label } of source.derived.marks) expect(text).toMatch(new RegExp(`\\b${label}\\b`));
  });

  it('finds nothing outside of the margins', () => {
    const [width = 0, height = 0] = [612, 792];
    const words = [
      ...run('pdftotext', '-bbox', file, '-').matchAll(
        /xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)"/g,
      ),
    ];
    expect(words.length).toBeGreaterThan(200);
    for (const [, left, top, right, bottom] of words) {
      expect(Number(left)).toBeGreaterThan(20);
      expect(Number(top)).toBeGreaterThan(20);
      expect(Number(right)).toBeLessThan(width - 20);
      expect(Number(bottom)).toBeLessThan(height - 20);
    }
  });
});

describe('a page as SVG', SLOW, () => {
  it('has the page’s true size and the texts of the PDF, with markup in names made harmless', async () => {
    const site = { ...source.site, name: '<script>alert("x")</script> & Co' };
    const made = sheet(sourceOf(site));
    const [first] = made.pages;
    const svg = first === undefined ? '' : sheetSvg(first);
    expect(svg).toMatch(/^<svg [^>]*width="215.9mm" height="279.4mm"/);
    expect(svg).not.toContain('<script');
    expect(svg).toContain('&lt;script&gt;');
    const texts = [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map((m) => m[1]);
    const [page] = await readPdf(sheetPdf(made, FONTS));
    const count = first?.items.reduce(
      (sum, i) =>
        sum + (i.is === 'text' ? 1 : i.is === 'window' ? i.items.filter((k) => k.is === 'text').length : 0),
      0,
    );
    expect(texts.length).toBe(count);
    expect(page?.texts.length).toBeGreaterThan(100);
  });
});
