import { sheetOf, sheetPdf } from '@footmark/sheet';
import { describe, expect, it } from 'vitest';
import { thing, typed, yard } from '../../packages/site/src/testing/yard';
import { lengthOf, readPdf } from './readPdf';
import { DAY, FONTS, SLOW, sheet, sourceOf, USUAL } from './sheets';

// A PDF counts in points of 1/72 in (ISO 32000, from memory), and 1 ft is 0.3048 m exactly, so 1 in = 10 ft is 7.2 points a foot. Paper: ANSI A and B
// (ASME Y14.1, from memory), A4 and A3 (ISO 216, from memory). Read by pdfjs-dist.

const FOOT = 0.3048;

/** Two walls of that length (m), square to each other. */
function walls(length: number, units: 'ft' | 'm') {
  const site = yard({
    features: [thing('wall', 'retaining-wall', [typed(0, 0), typed(length, 0), typed(length, length / 4)])],
  });
  return sourceOf({ ...site, units: { ...site.units, length: units } });
}

async function longest(source: ReturnType<typeof walls>, scale: number, paper = USUAL.paper) {
  const pages = await readPdf(sheetPdf(sheet(source, { scale, paper }), FONTS));
  return pages.map((page) => page.segments.map(lengthOf));
}

const TABLOID = { name: 'tabloid', turned: true } as const;

describe('a line on the plan', SLOW, () => {
  it.each([
    [100, 10, 720],
    [50, 5, 720],
    [100, 20, 360],
    [100, 30, 240],
    [100, 40, 180],
    [1000, 100, 720],
  ])('of %d ft at 1 in = %d ft is %d points long', async (feet, inch, points) => {
    const [page] = await longest(walls(feet * FOOT, 'ft'), inch * 12, TABLOID);
    expect(page?.some((l) => Math.abs(l - points) < 0.002)).toBe(true);
  });

  it.each([
    [10, 100],
    [20, 200],
    [5, 50],
    [50, 250],
  ])('of %d m at 1:%d is as long as 72 points to 25.4 mm make it', async (metres, denominator) => {
    const [page] = await longest(walls(metres, 'm'), denominator, TABLOID);
    const points = ((metres * 1000) / denominator / 25.4) * 72;
    expect(page?.some((l) => Math.abs(l - points) < 0.002)).toBe(true);
  });

  it('is true to scale also where the plan is turned to be larger', async () => {
    const upright = walls(100 * FOOT, 'ft');
    const [page] = await longest(upright, 120, { name: 'tabloid', turned: false });
    expect(page?.some((l) => Math.abs(l - 720) < 0.002)).toBe(true);
  });
});

describe('a page', SLOW, () => {
  it.each([
    ['letter', 612, 792],
    ['tabloid', 792, 1224],
    ['a4', (210 / 25.4) * 72, (297 / 25.4) * 72],
    ['a3', (297 / 25.4) * 72, (420 / 25.4) * 72],
  ] as const)(
    'of %s has its size to a tenth of a point, upright and on its side',
    async (name, short, long) => {
      const source = walls(10, 'm');
      for (const turned of [false, true]) {
        const pages = await readPdf(sheetPdf(sheet(source, { paper: { name, turned } }), FONTS));
        for (const page of pages) {
          expect(Math.abs(page.width - (turned ? long : short))).toBeLessThan(0.1);
          expect(Math.abs(page.height - (turned ? short : long))).toBeLessThan(0.1);
        }
      }
    },
  );
});

describe('a scale', SLOW, () => {
  const said = async (scale: number | 'fit' | 'largest', units: 'ft' | 'm') => {
    const [page] = await readPdf(sheetPdf(sheet(walls(30, units), { scale }), FONTS));
    return page?.texts.map((t) => t.text) ?? [];
  };

  it('is one of an engineer’s scale where the yard is in feet, and one of a metric rule where it is in metres', async () => {
    expect((await said('fit', 'ft')).some((t) => /^1 in = (5|[1-6]0|[1-9]00) ft$/.test(t))).toBe(true);
    expect((await said('fit', 'm')).some((t) => /^1:(50|100|200|250|500)$/.test(t))).toBe(true);
  });

  it('that fills the page is said as it is', async () => {
    const texts = await said('largest', 'm');
    const [one = ''] = texts.filter((t) => /^1:\d+$/.test(t));
    const denominator = Number(one.slice(2));
    const [page] = await longest(walls(30, 'm'), denominator);
    const points = ((30 * 1000) / denominator / 25.4) * 72;
    expect(page?.some((l) => Math.abs(l - points) < 0.002)).toBe(true);
    // a hair larger does not go on one page
    const larger = sheet(walls(30, 'm'), { scale: denominator - 1 });
    expect(larger.pages.length).toBeGreaterThan(sheet(walls(30, 'm'), { scale: denominator }).pages.length);
  });

  it('that would take a stack of paper is refused', () => {
    const far = walls(2000, 'm');
    const made = sheetOf(far, { ...USUAL, scale: 20, date: DAY }, FONTS);
    expect(made.ok ? made.value.pages.length : made).toEqual({
      ok: false,
      code: 'too-many-sheets',
    });
  });

  it('is drawn as a bar whose figures are true', async () => {
    const [page] = await readPdf(sheetPdf(sheet(walls(100 * FOOT, 'ft'), { scale: 240 }), FONTS));
    const [end] = page?.texts.filter((t) => /^\d+ ft$/.test(t.text) && t.size < 8) ?? [];
    const [zero] = page?.texts.filter((t) => t.text === '0' && Math.abs(t.y - (end?.y ?? 0)) < 0.01) ?? [];
    const feet = Number(end?.text.replace(' ft', ''));
    const drawn = (end?.x ?? 0) + (end?.width ?? 0) - (zero?.x ?? 0);
    expect(feet).toBeGreaterThan(0);
    expect(Math.abs(drawn - feet * 3.6)).toBeLessThan(0.05);
  });
});
