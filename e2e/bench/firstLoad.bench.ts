// Run: npx tsx e2e/bench/firstLoad.bench.ts, on a built app (pnpm build).
// The first visit of a browser that has nothing of the app: from the address to the frame with the first button, and from the press on it to the frame
// with the sample site's plan. Beside it: a page of one button from the same server, in the same browser.
import type { Browser, Page } from '@playwright/test';
import { quantile, tell } from '../../tests/bench/figures';
import { onBuiltApp } from './onBuiltApp';

const VISITS = 9;
const BUTTON = 'Open the sample site';

await onBuiltApp(async ({ app, context }) => {
  const browser = context.browser();
  if (browser === null) throw new Error('the browser gives no other contexts');
  const [screens, plans, bare] = [[] as number[], [] as number[], [] as number[]];
  for (let n = 0; n < VISITS; n++) {
    bare.push(
      await visit(browser, async (page) => {
        await page.route('**/bare', (route) =>
          route.fulfill({ contentType: 'text/html', body: `<button>${BUTTON}</button>` }),
        );
        return await seen(page, () => page.goto(`${app.origin}/bare`), 'button');
      }),
    );
    await visit(browser, async (page) => {
      screens.push(await seen(page, () => page.goto(app.origin), 'main button'));
      const press = () => page.getByRole('button', { name: BUTTON }).click();
      plans.push(await seen(page, press, 'main[aria-label=Plan] canvas'));
      return 0;
    });
  }
  const [screen, plan, plain] = [screens, plans, bare].map((times) => quantile(times, 0.5)) as [
    number,
    number,
    number,
  ];
  const to = 'a page of one button';
  tell({
    name: 'first visit: the first screen is there, median',
    value: screen,
    unit: 'ms',
    ratio: { to, times: screen / plain },
  });
  tell({
    name: 'first visit: the sample site is there, median',
    value: plan,
    unit: 'ms',
    ratio: { to, times: plan / plain },
  });
  return true;
});

async function visit(browser: Browser, work: (page: Page) => Promise<number>): Promise<number> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, locale: 'en-US' });
  try {
    return await work(await context.newPage());
  } finally {
    await context.close();
  }
}

/** Milliseconds from the start of something to the frame after an element is there. */
async function seen(page: Page, start: () => Promise<unknown>, selector: string): Promise<number> {
  const began = performance.now();
  await start();
  await page.locator(selector).first().waitFor();
  await page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve))));
  return performance.now() - began;
}
