import { type Item, type Page, sheetPdf } from '@footmark/sheet';
import { describe, expect, it } from 'vitest';
import { thing, typed, yard } from '../../packages/site/src/testing/yard';
import { readPdf, textOn } from './readPdf';
import { FONTS, SLOW, sheet, sourceOf } from './sheets';

// A yard that goes over several pages: slanted walls cross the match lines, and have to go on where they left off.

const site = yard({
  features: [
    thing('rising', 'retaining-wall', [typed(0, 0), typed(60, 23)]),
    thing('falling', 'retaining-wall', [typed(0, 41), typed(60, 3)]),
    thing('house', 'building', [typed(0, 0), typed(60, 0), typed(60, 42), typed(0, 42)]),
  ],
});
const source = sourceOf(site);

type Window = Extract<Item, { is: 'window' }>;

/** The plan of a page: its largest window. */
function planOf(page: Page): Window | undefined {
  return page.items
    .flatMap((item) => (item.is === 'window' ? [item] : []))
    .sort((a, b) => b.box.width * b.box.height - a.box.width * a.box.height)[0];
}

/** Where the long lines of a window cross its edge at `x`, mm from the window's top. */
function crossings({ box, items }: Window, x: number): readonly number[] {
  return items
    .flatMap((item) => (item.is === 'lines' && item.pen !== undefined ? item.lines : []))
    .flatMap((line) => line.slice(1).map((to, i) => [line[i] ?? to, to] as const))
    .filter(([a, b]) => Math.abs(a.x - b.x) > 500 && Math.abs(a.y - b.y) > 50)
    .map(([a, b]) => a.y + ((x - a.x) / (b.x - a.x)) * (b.y - a.y) - box.y)
    .filter((y) => y >= 0 && y <= box.height)
    .sort((a, b) => a - b);
}

const made = sheet(source, { scale: 50, paper: { name: 'a4', turned: true } });
const plans = made.pages.flatMap((page) => planOf(page) ?? []).filter((w) => w.box.height > 100);

describe('a yard that is larger than its page', SLOW, () => {
  it('goes over several pages, each true to scale', () => {
    expect(plans.length).toBeGreaterThan(6);
  });

  it('goes on over an upright match line where it left off', () => {
    let compared = 0;
    for (const [i, plan] of plans.entries()) {
      const next = plans[i + 1];
      if (next === undefined) continue;
      const [right, left] = [crossings(plan, plan.box.x + plan.box.width), crossings(next, next.box.x)];
      // the last of a row has no neighbour at its right
      if (!hasEdgeTo(made.pages[i], i + 2)) continue;
      expect(left.length).toBe(right.length);
      for (const [k, y] of right.entries()) expect(Math.abs((left[k] ?? Infinity) - y)).toBeLessThan(0.01);
      compared += right.length;
    }
    expect(compared).toBeGreaterThan(3);
  });

  it('names on each match line the sheet that goes on, which names it in turn', async () => {
    const pages = await readPdf(sheetPdf(made, FONTS));
    const named = pages.map((page) =>
      [...textOn(page).matchAll(/Match line, see sheet (\d+)/g)].map((m) => Number(m[1])),
    );
    for (const [i, others] of named.entries())
      for (const other of others) expect(named[other - 1], `${i + 1} and ${other}`).toContain(i + 1);
    expect(named.flat().length).toBeGreaterThan(10);
  });

  it('has a key plan on each of these pages', async () => {
    const pages = await readPdf(sheetPdf(made, FONTS));
    for (const page of pages.slice(0, plans.length)) expect(textOn(page)).toContain('Key plan');
  });
});

function hasEdgeTo(page: Page | undefined, number: number): boolean {
  const texts = page?.items.flatMap((i) => (i.is === 'text' && i.turn !== 0 ? [i.text] : [])) ?? [];
  return texts.includes(`Match line, see sheet ${number}`);
}
