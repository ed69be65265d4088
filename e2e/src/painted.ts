import type { Page } from '@playwright/test';

declare global {
  interface Window {
    painted: string[];
  }
}

/** Keeps every text that a page opened from now on writes on a canvas. */
export async function listenToCanvas(page: Page): Promise<void> {
  await page.addInitScript(() => {
    window.painted = [];
    const fillText = CanvasRenderingContext2D.prototype.fillText;
    CanvasRenderingContext2D.prototype.fillText = function keep(...args: Parameters<typeof fillText>) {
      window.painted.push(args[0]);
      return fillText.apply(this, args);
    };
  });
}

/** The texts written on canvases while something is done and the two frames after it. */
export async function paintedWhile(page: Page, doing: () => Promise<void>): Promise<readonly string[]> {
  await page.evaluate(() => {
    window.painted = [];
  });
  await doing();
  return await page.evaluate(
    () =>
      new Promise<string[]>((resolve) => {
        requestAnimationFrame(() => requestAnimationFrame(() => resolve(window.painted)));
      }),
  );
}
