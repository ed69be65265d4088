// Run: npx tsx e2e/bench/sites.bench.ts, on a built app (pnpm build).
// The list of 1,000 and of 5,000 sites: from the press that leads to it to the frame in which it is seen, and from a letter in its search field to the
// frame that shows what was found. Beside it in the same page: a bare list of as many rows with the same texts, put in at once, to its frame.
import type { Page } from '@playwright/test';
import { quantile, tell } from '../../tests/bench/figures';
import { fillDevice } from './fillDevice';
import { onBuiltApp } from './onBuiltApp';
import { siteOfSize } from './siteOfSize';

const SITE_BYTES = 2_000;
const RUNS = 15;
const WARM_UP = 3;
const SIZES = [{ count: 1_000 }, { count: 5_000, goalMs: 300 }] as const;

declare global {
  interface Window {
    /** Milliseconds from what `start` does to the end of the frame in which `seen` holds. */
    untilSeen: (start: () => void, seen: () => boolean) => Promise<number>;
  }
}

await onBuiltApp(async ({ app, context }) => {
  const page = await context.newPage();
  await page.addInitScript(() => {
    window.untilSeen = (start, seen) =>
      new Promise((resolve) => {
        const began = performance.now();
        const afterFrame = () =>
          requestAnimationFrame(() => {
            const { port1, port2 } = new MessageChannel();
            port1.onmessage = () => resolve(performance.now() - began);
            port2.postMessage(null);
          });
        const watch = new MutationObserver(() => {
          if (!seen()) return;
          watch.disconnect();
          afterFrame();
        });
        watch.observe(document.body, { subtree: true, childList: true, characterData: true });
        start();
      });
  });
  await page.goto(app.origin);
  await page.getByRole('heading', { name: 'Sites on this device' }).waitFor();
  let met = true;
  for (const { count, ...size } of SIZES) {
    await fillDevice(page, siteOfSize(SITE_BYTES), count);
    await page.goto('about:blank');
    await page.goto(app.origin);
    await page.getByText(`Yard ${count - 1}`, { exact: true }).waitFor();
    const [opened, found, bare] = [[] as number[], [] as number[], [] as number[]];
    for (let n = 0; n < WARM_UP + RUNS; n++) {
      await page.getByRole('link', { name: 'About Footmark' }).click();
      await page.getByRole('heading', { name: 'About Footmark' }).waitFor();
      opened.push(await openList(page, count));
      found.push(await search(page, count));
      bare.push(await bareList(page, count));
    }
    const [open, look, plain] = [opened, found, bare].map((times) => quantile(times.slice(WARM_UP), 0.5)) as [
      number,
      number,
      number,
    ];
    const name = `list of ${count.toLocaleString('en-US')} sites`;
    const to = `a bare list of ${count.toLocaleString('en-US')} rows`;
    met =
      tell({
        name: `${name} opens, median`,
        value: open,
        unit: 'ms',
        ...('goalMs' in size ? { goal: { under: size.goalMs } } : {}),
        ratio: { to, times: open / plain },
      }) && met;
    tell({
      name: `${name}: a letter of a search, median`,
      value: look,
      unit: 'ms',
      ratio: { to, times: look / plain },
    });
  }
  return met;
});

/** Goes back to the list, as the way back on the page does, until its last saved site is seen. */
function openList(page: Page, count: number): Promise<number> {
  return page.evaluate(
    (last) =>
      window.untilSeen(
        () => {
          location.hash = '#/';
        },
        () => document.querySelector('li button strong')?.textContent === last,
      ),
    `Yard ${count - 1}`,
  );
}

/** Types the last letter of a number into the search field, from the key to the list of those that have it; and empties the field again. */
async function search(page: Page, count: number): Promise<number> {
  const field = page.getByRole('searchbox');
  await field.fill('Yard 77');
  const took = page.evaluate(
    (first) =>
      new Promise<number>((resolve) => {
        const seen = () => document.querySelector('li button strong')?.textContent === first;
        const onKey = () => resolve(window.untilSeen(() => {}, seen));
        addEventListener('keydown', onKey, { once: true, capture: true });
      }),
    lastWith('777', count),
  );
  await field.press('7');
  const ms = await took;
  await field.fill('');
  return ms;
}

/** The last saved of so many sites whose number has these digits. */
function lastWith(digits: string, count: number): string {
  let n = count - 1;
  while (!String(n).includes(digits)) n -= 1;
  return `Yard ${n}`;
}

/** Puts a bare list of the same texts in place of nothing, and takes it out again. */
function bareList(page: Page, count: number): Promise<number> {
  return page.evaluate(async (rows) => {
    const list = document.createElement('ul');
    const took = await window.untilSeen(
      () => {
        for (let n = 0; n < rows; n++) {
          const row = list.appendChild(document.createElement('li'));
          for (const text of [`Yard ${n}`, `${n} Example Street`, `3 things in the yard. Saved ${n}.`])
            row.appendChild(document.createElement('span')).textContent = text;
        }
        document.body.append(list);
      },
      () => list.isConnected,
    );
    list.remove();
    return took;
  }, count);
}
