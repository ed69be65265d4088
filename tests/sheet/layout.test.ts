import {
  type Item,
  inkSets,
  type Page,
  paperNames,
  type SheetOptions,
  type SheetSource,
} from '@footmark/sheet';
import { en, es, sheetKinds, type Words } from '@footmark/words';
import { describe, expect, it } from 'vitest';
import { letteringOf } from '../../packages/sheet/src/font/sheetFonts';
import { push } from '../../packages/site/src/testing/yard';
import { FONTS, SLOW, sample, sheet, sourceOf } from './sheets';

// Nothing lies over anything else, and nothing off the page, whatever the paper, the kind, the language and the length of the table.

type Box = Readonly<{ text: string; left: number; right: number; top: number; bottom: number }>;

const lettering = letteringOf(FONTS);

/** Texts that stand on the page itself; those in windows are placed by the drawing's own rules. */
function textsOn(page: Page): readonly Box[] {
  return page.items.flatMap((item) => (item.is === 'text' && item.turn === 0 ? [boxOf(item)] : []));
}

function boxOf({ at, text, size, weight, anchor }: Extract<Item, { is: 'text' }>): Box {
  const width = lettering.widthOf(text, size, weight);
  const left = at.x - width * { start: 0, middle: 0.5, end: 1 }[anchor];
  // capitals and digits, without tails
  return { text, left, right: left + width, top: at.y - 0.7 * size, bottom: at.y };
}

function overlapping(boxes: readonly Box[]): readonly string[] {
  const sorted = [...boxes].sort((a, b) => a.top - b.top);
  return sorted.flatMap((a, i) =>
    sorted.slice(i + 1).flatMap((b) => {
      const apart = b.top >= a.bottom - 0.01 || b.left >= a.right - 0.01 || b.right <= a.left + 0.01;
      return apart ? [] : [`“${a.text}” over “${b.text}”`];
    }),
  );
}

/** Every place that an item reaches, mm. */
function reachOf(item: Item): readonly { x: number; y: number }[] {
  switch (item.is) {
    case 'lines':
      return item.lines.flat();
    case 'circle':
      return [-1, 1].map((s) => ({ x: item.centre.x + s * item.radius, y: item.centre.y + s * item.radius }));
    case 'text': {
      if (item.turn !== 0) return [item.at];
      const { left, right, top, bottom } = boxOf(item);
      return [
        { x: left, y: top },
        { x: right, y: bottom },
      ];
    }
    default: {
      const { x, y, width, height } = item.box;
      return [
        { x, y },
        { x: x + width, y: y + height },
      ];
    }
  }
}

const MARGIN = 10 - 0.5;

function expectSound(source: SheetSource, options: Partial<SheetOptions>) {
  const { pages } = sheet(source, options);
  for (const page of pages) {
    expect(overlapping(textsOn(page))).toEqual([]);
    const outside = page.items.filter((item) =>
      reachOf(item).some(
        ({ x, y }) => x < MARGIN || y < MARGIN || x > page.width - MARGIN || y > page.height - MARGIN,
      ),
    );
    expect(outside).toEqual([]);
  }
  return pages;
}

/** Everything that the sheet says of itself a quarter longer, as other languages are. */
function longer(words: Words): Words {
  const stretch = (text: string) =>
    `${text} ${'loremo'.repeat(1 + text.length / 24).slice(0, Math.ceil(text.length / 4))}`;
  const sheetWords = Object.fromEntries(
    Object.entries(words.sheet).map(([name, say]) => [
      name,
      (...given: never[]) => {
        const said = (say as (...args: never[]) => string | readonly string[])(...given);
        return typeof said === 'string' ? stretch(said) : said.map(stretch);
      },
    ]),
  );
  return { ...words, sheet: sheetWords as unknown as Words['sheet'] }; // the same functions, each with a longer answer
}

const sites = [sample('rear-alley'), sample('front-terrace')];
const sources = [en, es].flatMap((words) => sites.map((site) => sourceOf(site, words)));
const papers = paperNames.flatMap((name) => [false, true].map((turned) => ({ name, turned })));

describe.each(sheetKinds)('a sheet of kind %s', SLOW, (kind) => {
  it.each(papers)('stands on $name (on its side: $turned) with nothing over anything else', (paper) => {
    for (const source of sources) expectSound(source, { kind, paper });
  });

  it('has room for a language that takes a quarter more', () => {
    for (const site of sites) expectSound(sourceOf(site, longer(en)), { kind });
  });

  it('is grey in black and white', () => {
    const colours = (items: readonly Item[]): readonly string[] =>
      items.flatMap((item) => {
        if (item.is === 'window') return colours(item.items);
        if (item.is === 'text') return [item.colour];
        if (item.is === 'image') return [];
        return [item.pen?.colour, item.tint?.colour].flatMap((c) => c ?? []);
      });
    const used = (ink: SheetOptions['ink']) =>
      sheet(sources[0] ?? sourceOf(sample('rear-alley')), { kind, ink }).pages.flatMap((p) =>
        colours(p.items),
      );
    const isGrey = (c: string) => c.slice(1, 3) === c.slice(3, 5) && c.slice(3, 5) === c.slice(5, 7);
    const [colour, black] = inkSets.map((ink) => used(ink));
    expect(black?.length).toBeGreaterThan(100);
    expect(black?.filter((c) => !isGrey(c))).toEqual([]);
    expect(colour?.some((c) => !isGrey(c))).toBe(true);
  });
});

describe('a long table', SLOW, () => {
  const site = sample('rear-alley');
  const [first] = site.runs;
  if (first === undefined) throw new Error('the sample has no run');
  const READINGS = 140;
  const many = push({ id: 'many', letter: 'M', entry: first.entry, path: first.path }, [
    ...Array.from({ length: READINGS }, (_, i) => ({
      counter: 0.1 + i * 0.12,
      note: `seen ${'again '.repeat(i % 12)}`,
    })),
  ]);
  const source = sourceOf({
    ...site,
    runs: [...site.runs, { ...many, readings: many.readings.map((r) => ({ ...r, id: `many-${r.id}` })) }],
  });

  it('goes on over pages, its head on each, every mark once and none cut', () => {
    const pages = expectSound(source, {});
    const labels = source.derived.marks.map((m) => m.label);
    const heads = pages.flatMap((page) => {
      const texts = page.items.flatMap((i) => (i.is === 'text' ? [i] : []));
      const rows = texts.filter((t) => labels.includes(t.text) && t.weight === 'bold' && t.size > 4.2);
      if (rows.length > 0) expect(texts.some((t) => t.text === en.sheet.column('tie-1'))).toBe(true);
      return rows.map((t) => t.text);
    });
    expect([...heads].sort()).toEqual([...labels].sort());
  });
});

describe('names that people typed', SLOW, () => {
  const HARD =
    'Abteilungsübergreifendes‮ <script>=HYPERLINK("x")</script> 污水 😀 Grundstücksentwässerungsanlage \u0007 of the far side';
  const site = sample('rear-alley');
  const source = sourceOf({
    ...site,
    name: HARD,
    address: HARD.repeat(3),
    features: site.features.map((f) => ({ ...f, name: f.name === '' ? '' : HARD })),
  });

  it.each(sheetKinds)('that are long and hard keep to their room in a sheet of kind %s', (kind) => {
    const pages = expectSound(source, { kind, facts: { preparedBy: HARD, preparedFor: HARD, note: HARD } });
    const texts = pages.flatMap((p) => textsOn(p).map((b) => b.text)).join('\n');
    // controls and direction overrides are gone, what the font lacks is seen to be missing
    expect(texts.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Cf}]/u);
    expect(texts).toContain('?');
  });
});
