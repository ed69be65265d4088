import type { Page } from '@playwright/test';
import { expect, test } from '../src/fixtures';
import { openSample } from '../src/openSample';

declare global {
  interface Window {
    /** Shares of the plan's canvas that were painted anew, by its ground. */
    grounds: number[];
  }
}

/** A plan that is the same for this long (ms) has its labels, its zones and what stands in the way. */
const STEADY_MS = 700;

test('what is painted anew in part looks as the whole would', async ({ page, hand }) => {
  await page.addInitScript(() => {
    window.grounds = [];
    const fill = CanvasRenderingContext2D.prototype.fillRect;
    CanvasRenderingContext2D.prototype.fillRect = function filled(...args) {
      const { a } = this.getTransform();
      window.grounds.push((args[2] * args[3] * a * a) / (this.canvas.width * this.canvas.height));
      fill.apply(this, args);
    };
  });
  const screen = await openSample(page, hand);
  const inPart: string[] = [];
  const compare = async (after: string, act: () => Promise<void>) => {
    await page.evaluate(() => void window.grounds.splice(0));
    await act();
    await steady(page);
    const grounds = await page.evaluate(() => window.grounds);
    if (grounds.length > 0 && grounds.every((share) => share < 0.9)) inPart.push(after);
    expect(await differing(page), after).toBe(0);
  };

  await steady(page);
  await hand.press(screen.row('Hedge'));
  await compare('a nudge', async () => {
    for (const key of ['ArrowRight', 'ArrowUp', 'ArrowUp']) await page.keyboard.press(key);
  });
  await screen.goTo('Yard');
  await compare('a tree in hand', () => hand.press(screen.row('Sycamore')));
  await compare('its crown', () => screen.fill('Crown spread', '41 ft'));
  await compare('a tree taken out', () => screen.press('Delete'));
  await compare('it is back', async () => {
    await screen.undo();
  });
  await screen.goTo('Marks');
  await compare('a mark in hand', () => hand.press(screen.row('A8')));
  await compare('the next', () => screen.press('Next mark'));
  await screen.goTo('Line');
  await compare('a line in hand', () => hand.press(screen.row('Lateral')));
  expect(inPart).toEqual(expect.arrayContaining(['a nudge', 'its crown', 'the next']));
});

/** Until the plan has stayed as it is for a while. */
async function steady(page: Page): Promise<void> {
  await page.evaluate(async (still) => {
    const canvas = document.querySelector('main canvas');
    if (!(canvas instanceof HTMLCanvasElement)) throw new Error('there is no plan');
    let [last, since] = ['', performance.now()];
    while (performance.now() - since < still) {
      await new Promise((resolve) => setTimeout(resolve, 100));
      const now = canvas.toDataURL();
      if (now !== last) since = performance.now();
      last = now;
    }
  }, STEADY_MS);
}

/** Edges that are cut by the part's own are blended a little otherwise; a line that was left behind or is missing differs by more (of 255). */
const BLENDED = 64;

/** How many values of pixels the plan has otherwise than when it is painted anew as a whole, as after the browser has thrown its canvas away. */
async function differing(page: Page): Promise<number> {
  return await page.evaluate((blended) => {
    const canvas = document.querySelector('main canvas');
    if (!(canvas instanceof HTMLCanvasElement)) throw new Error('there is no plan');
    const look = () => canvas.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height).data;
    const part = look();
    canvas.getContext('2d')?.clearRect(0, 0, 9999, 9999);
    canvas.dispatchEvent(new Event('contextrestored'));
    const whole = look();
    if (part === undefined || whole === undefined) throw new Error('the plan cannot be read');
    return part.reduce((count, value, i) => count + (Math.abs(value - (whole[i] ?? 0)) > blended ? 1 : 0), 0);
  }, BLENDED);
}
