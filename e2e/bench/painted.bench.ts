// Run: npx tsx e2e/bench/painted.bench.ts, on a built app (pnpm build).
// From an edit of the sample site to the frame that shows it: from the key that moves a tree by an inch to the end of the frame in which the plan is
// painted anew. The browser does not wait for a screen's beat, so the time is the app's own and not that to the next beat, which is up to 16.7 ms at 60 Hz.
// Beside it: from a key that does nothing to the end of the next frame.
import type { CDPSession, Page } from '@playwright/test';
import { quantile, tell } from '../../tests/bench/figures';
import { onBuiltApp } from './onBuiltApp';

const EDITS = 300;
const WARM_UP = 60;
const GOAL_MS = 16;
const NO_BEAT = ['--disable-frame-rate-limit', '--disable-gpu-vsync'];

declare global {
  interface Window {
    /** Milliseconds of each edit, and of each key that did nothing. */
    keysPainted: { edits: number[]; bare: number[] };
  }
}

await onBuiltApp(async ({ app, context }) => {
  const page = await context.newPage();
  await page.addInitScript(watchKeys);
  await page.goto(app.origin);
  await page.getByRole('button', { name: 'Open the sample site' }).click();
  await page.getByRole('main', { name: 'Plan' }).waitFor();
  await page
    .getByRole('listitem')
    .getByRole('button', { name: /^Power pole/ })
    .click();
  await page.getByText('Saved on this device', { exact: true }).waitFor();
  const cpu = await processorOf(await context.newCDPSession(page));
  const edits = await press(page, 'edits', (n) => (n % 2 === 0 ? 'ArrowRight' : 'ArrowLeft'));
  const editsCpu = (await cpu()) / (WARM_UP + EDITS);
  const bare = await press(page, 'bare', () => 'F8');
  const bareCpu = (await cpu()) / (WARM_UP + EDITS);
  const [p95, bare95] = [quantile(edits, 0.95), quantile(bare, 0.95)];
  console.log(
    `${edits.length} edits: median ${quantile(edits, 0.5).toFixed(1)} ms, worst ${quantile(edits, 1).toFixed(1)} ms`,
  );
  // what others do on the machine does not show in this one
  tell({
    name: 'an edit of the sample site: processor time of the page, with all that follows from it',
    value: editsCpu,
    unit: 'ms',
    ratio: { to: 'a key that does nothing', times: editsCpu / bareCpu },
  });
  return tell({
    name: 'an edit of the sample site is painted, 95 of 100',
    value: p95,
    unit: 'ms',
    goal: { under: GOAL_MS },
    ratio: { to: 'a key that does nothing, to the next frame', times: p95 / bare95 },
  });
}, NO_BEAT);

/** Gives what tells how long (ms) the page's own thread has had a processor since it was asked last. */
async function processorOf(cdp: CDPSession): Promise<() => Promise<number>> {
  await cdp.send('Performance.enable', { timeDomain: 'threadTicks' });
  let last = 0;
  const since = async () => {
    const { metrics } = await cdp.send('Performance.getMetrics');
    const now = 1000 * (metrics.find(({ name }) => name === 'TaskDuration')?.value ?? Number.NaN);
    const gone = now - last;
    last = now;
    return gone;
  };
  await since();
  return since;
}

/** Presses keys, each once the one before has been painted. */
async function press(
  page: Page,
  what: keyof Window['keysPainted'],
  keyOf: (n: number) => string,
): Promise<readonly number[]> {
  for (let n = 0; n < WARM_UP + EDITS; n++) {
    await page.keyboard.press(keyOf(n));
    await page.waitForFunction(({ what, n }) => window.keysPainted[what].length > n, { what, n } as const, {
      polling: 5,
    });
  }
  return (await page.evaluate((of) => window.keysPainted[of], what)).slice(WARM_UP);
}

/** In the page: notes for each key when the frame ends in which the plan is cleared to be painted anew, or the next frame. */
function watchKeys(): void {
  window.keysPainted = { edits: [], bare: [] };
  let began = 0;
  let inFrame = false;
  const ask = window.requestAnimationFrame.bind(window);
  window.requestAnimationFrame = (callback) =>
    ask((time) => {
      inFrame = true;
      try {
        callback(time);
      } finally {
        inFrame = false;
      }
    });
  /** A message that is sent within a frame is heard when that has been painted. */
  const note = (of: number[]) => {
    const from = began;
    began = 0;
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => of.push(performance.now() - from);
    if (inFrame) port2.postMessage(null);
    else ask(() => port2.postMessage(null));
  };
  addEventListener(
    'keydown',
    ({ key, timeStamp }) => {
      began = timeStamp;
      if (key === 'F8') note(window.keysPainted.bare);
    },
    true,
  );
  const clear = CanvasRenderingContext2D.prototype.clearRect;
  CanvasRenderingContext2D.prototype.clearRect = function cleared(...args) {
    clear.apply(this, args);
    if (began > 0) note(window.keysPainted.edits);
  };
}
