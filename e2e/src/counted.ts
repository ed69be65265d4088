import { test as base } from './fixtures';
import { pointerHand } from './hand';
import { Walk } from './Walk';

/** A journey whose hand is counted; what it took goes into the table. */
export const test = base.extend<{ readonly walk: Walk }>({
  // biome-ignore lint/correctness/noEmptyPattern: Playwright reads what a fixture needs from this pattern
  walk: async ({}, use, info) => {
    const walk = new Walk(info);
    await use(walk);
    await info.attach('counts', { body: JSON.stringify(walk.counts) });
  },
  hand: async ({ page, hasTouch, walk }, use) =>
    use(walk.counting(page, pointerHand(page, hasTouch ? 'touch' : 'mouse'))),
});

export { expect } from './fixtures';
