// Run: npx tsx e2e/bench/memory.bench.ts, on a built app (pnpm build).
// What 1,000 edits leave behind: the page's heap and its nodes after a forced collection, before and after. The history is full before, as it keeps a
// number of steps by design; each edit moves one thing of a yard of 200 kB a centimetre or an inch there or back, so that the site stays as large as it was.
import type { CDPSession, Page } from '@playwright/test';
import { tell } from '../../tests/bench/figures';
import { onBuiltApp } from './onBuiltApp';
import { grasp, middleOf, openFile } from './openCrowded';
import { siteOfSize } from './siteOfSize';

const SITE_BYTES = 200_000;
/** More than the steps of undo that are kept. */
const FILLING = 600;
const EDITS = 1_000;
/** Of the heap (%). */
const GOAL_PERCENT = 5;

await onBuiltApp(async ({ app, context }) => {
  const page = await context.newPage();
  const cdp = await context.newCDPSession(page);
  const site = siteOfSize(SITE_BYTES);
  await openFile(page, app.origin, site);
  const opened = await heapAfterCollection(page, cdp);
  await grasp(page, await middleOf(page));
  await edit(page, FILLING);
  const before = await heapAfterCollection(page, cdp);
  await edit(page, EDITS);
  const after = await heapAfterCollection(page, cdp);
  const siteMb = JSON.stringify(site).length / 1e6;
  console.log(
    `heap ${opened.toFixed(2)} MB as opened, ${before.toFixed(2)} MB after ${FILLING} edits, ${after.toFixed(2)} MB after ${EDITS} more`,
  );
  tell({
    name: `heap with a site of 200 kB and a full history`,
    value: after,
    unit: 'MB',
    ratio: { to: 'the site as JSON', times: after / siteMb },
  });
  return tell({
    name: 'growth of the heap over 1,000 edits',
    value: (100 * (after - before)) / before,
    unit: '%',
    goal: { under: GOAL_PERCENT },
    ratio: { to: 'the site as JSON, by MB', times: (after - before) / siteMb },
  });
});

/** Presses an arrow key there and back so many times; each press is a step of undo and is saved. */
async function edit(page: Page, times: number): Promise<void> {
  for (let n = 0; n < times; n++) await page.keyboard.press(n % 2 === 0 ? 'ArrowRight' : 'ArrowLeft');
  await page.getByText('Saved on this device', { exact: true }).waitFor({ timeout: 120_000 });
}

/** Megabytes that JavaScript holds, once all that can be let go is. */
async function heapAfterCollection(page: Page, cdp: CDPSession): Promise<number> {
  // what is still computed by a worker comes first
  await page.waitForTimeout(2_000);
  for (let n = 0; n < 3; n++) await cdp.send('HeapProfiler.collectGarbage');
  const { usedSize } = await cdp.send('Runtime.getHeapUsage');
  return usedSize / 1e6;
}
