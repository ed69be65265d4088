import type { Page } from '@playwright/test';

/** What the page did while it was watched: time between frames (ms), writes of the site to the device, commits of React. */
export type Watched = {
  readonly frames: readonly number[];
  readonly writes: number;
  readonly commits: number;
};

declare global {
  interface Window {
    recorder: { start: () => void; stop: () => Watched; writes: () => number };
  }
}

/**
 * Puts a recorder into every page that is opened from now on: frames by requestAnimationFrame, writes by what goes to the worker that writes, and
 * commits by the hook that React calls for its developer tools.
 */
export async function recordPages(page: Page): Promise<void> {
  await page.addInitScript(() => {
    let frames: number[] = [];
    let [last, asked, writes, commits] = [0, 0, 0, 0];
    let since = { writes: 0, commits: 0 };
    const onFrame = (time: number) => {
      if (last > 0) frames.push(time - last);
      last = time;
      asked = requestAnimationFrame(onFrame);
    };
    window.recorder = {
      start: () => {
        [frames, last, since] = [[], 0, { writes, commits }];
        asked = requestAnimationFrame(onFrame);
      },
      stop: () => {
        cancelAnimationFrame(asked);
        return { frames, writes: writes - since.writes, commits: commits - since.commits };
      },
      writes: () => writes,
    };
    // each site that is to be written goes to a worker
    const post = Worker.prototype.postMessage;
    Worker.prototype.postMessage = function count(this: Worker, ...args: Parameters<typeof post>) {
      if ('save' in Object(args[0])) writes += 1;
      post.apply(this, args);
    } as typeof post;
    Object.assign(window, {
      __REACT_DEVTOOLS_GLOBAL_HOOK__: {
        supportsFiber: true,
        renderers: new Map(),
        inject: () => 1,
        onCommitFiberRoot: () => {
          commits += 1;
        },
        onCommitFiberUnmount: () => {},
        checkDCE: () => {},
      },
    });
  });
}
