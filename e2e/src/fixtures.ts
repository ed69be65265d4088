import { test as base, expect, type Page } from '@playwright/test';
import { type Hand, keyboardHand, type Pointer, pointerHand } from './hand';

type Fixtures = {
  /** The mouse on a desk, fingers on the others. */
  readonly hand: Pointer;
  readonly keys: Hand;
  /** Fails the test when the page reached for anything outside of its origin, logged an error or threw one. */
  readonly quiet: undefined;
};

export const test = base.extend<Fixtures>({
  hand: async ({ page, hasTouch }, use) => use(pointerHand(page, hasTouch ? 'touch' : 'mouse')),
  keys: async ({ page }, use) => use(keyboardHand(page)),
  quiet: [
    async ({ page, baseURL }, use) => {
      const heard = listenTo(page, new URL(baseURL ?? '').origin);
      await use(undefined);
      expect(heard, 'requests that left the origin, console errors, page errors').toEqual([]);
    },
    { auto: true },
  ],
});

/** What a page and its service worker do that they should not: requests that leave the origin, failures, errors in words. It grows as they do. */
export function listenTo(page: Page, origin: string): readonly string[] {
  const heard: string[] = [];
  const stays = (url: string) => /^(blob|data):/.test(url) || new URL(url).origin === origin;
  page.context().on('request', (request) => {
    if (!stays(request.url())) heard.push(`request: ${request.url()}`);
  });
  page.on('websocket', (socket) => heard.push(`socket: ${socket.url()}`));
  page.on('requestfailed', (request) => {
    // a page that is left gives up what it was fetching ahead
    const isLeft = request.failure()?.errorText === 'net::ERR_ABORTED';
    if (!isLeft && !request.url().startsWith('blob:')) heard.push(`failed: ${request.url()}`);
  });
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') heard.push(`console: ${message.text()}`);
  });
  page.on('pageerror', (error) => heard.push(`error: ${error.stack ?? error.message}`));
  return heard;
}

export { expect } from '@playwright/test';
