import { test as base } from '@playwright/test';
import { expect, listenTo, test } from '../src/fixtures';

/** A name that leads nowhere by standard: RFC 6761, section 6.4. */
const ELSEWHERE = 'https://elsewhere.invalid/';

base('whoever asks elsewhere is noticed, the service worker too', async ({ page, context, baseURL }) => {
  const heard = listenTo(page, new URL(baseURL ?? '').origin);
  const asked = context.waitForEvent('serviceworker');
  await page.goto('./');
  const worker = await asked;
  await expect(page.getByText('Works without a network')).toBeVisible({ timeout: 20_000 });
  expect(heard).toEqual([]);
  await worker.evaluate((url) => fetch(url).catch(() => undefined), `${ELSEWHERE}worker`);
  await page.evaluate((url) => fetch(url).catch(() => undefined), `${ELSEWHERE}page`);
  expect(heard).toContain(`request: ${ELSEWHERE}worker`);
  expect(heard).toContain(`request: ${ELSEWHERE}page`);
});

base(
  'the page’s own policy refuses scripts, styles, frames and pictures that are not the program’s',
  async ({ page }) => {
    await page.goto('./');
    await expect(page.getByRole('heading', { name: 'Footmark', level: 1 })).toBeVisible();
    const refused = await page.evaluate(async (elsewhere) => {
      const directives: string[] = [];
      document.addEventListener('securitypolicyviolation', (event) =>
        directives.push(event.effectiveDirective),
      );
      const put = (name: string, set: (element: HTMLElement) => void) => {
        const element = document.createElement(name);
        set(element);
        document.body.append(element);
      };
      put('script', (element) => {
        element.textContent = 'window.ran = true';
      });
      put('style', (element) => {
        element.textContent = 'body { color: red }';
      });
      put('div', (element) => element.setAttribute('style', 'color: red'));
      put('div', (element) => {
        element.setAttribute('onclick', 'window.ran = true');
        element.click();
      });
      put('img', (element) => element.setAttribute('src', `${elsewhere}picture`));
      put('iframe', (element) => element.setAttribute('src', elsewhere));
      put('base', (element) => element.setAttribute('href', elsewhere));
      await fetch('http://elsewhere.invalid/').catch(() => undefined);
      // a frame is told of when it would load, which a busy machine puts off
      for (let waited = 0; waited < 50 && !directives.includes('frame-src'); waited++)
        await new Promise((resolve) => setTimeout(resolve, 100));
      return { directives: [...new Set(directives)].sort(), ran: Reflect.get(window, 'ran') };
    }, ELSEWHERE);
    expect(refused.ran).toBeUndefined();
    expect(refused.directives).toEqual([
      'base-uri',
      'connect-src',
      'frame-src',
      'img-src',
      'script-src-attr',
      'script-src-elem',
      'style-src-attr',
      'style-src-elem',
    ]);
  },
);

test('the server says how long files are good, and who may frame the page', async ({ page, request }) => {
  const pageAnswer = await request.get('./');
  expect(pageAnswer.headers()).toMatchObject({
    'cache-control': 'no-cache',
    'referrer-policy': 'no-referrer',
    'x-content-type-options': 'nosniff',
    'permissions-policy': expect.stringContaining('camera=(self), geolocation=(self)'),
    'content-security-policy': expect.stringMatching(
      /^default-src 'none'; script-src 'self'; .*frame-ancestors 'none'$/,
    ),
  });
  const worker = await request.get('./sw.js');
  expect(worker.headers()['cache-control']).toBe('no-cache');
  const [, script] = /src="\.(\/assets\/[^"]+\.js)"/.exec(await pageAnswer.text()) ?? [];
  const asset = await request.get(`.${script}`);
  expect(asset.headers()['cache-control']).toBe('public, max-age=31536000, immutable');
  await page.goto('./');
});
