// Run: npx tsx e2e/bench/frames.bench.ts, on a built app (pnpm build).
// Time between frames while a hand pans, zooms and drags on a crowded yard: real input events in a browser that draws by software.
import type { BrowserContext, Page } from '@playwright/test';
import { quantile, tell } from '../../tests/bench/figures';
import { crowdedSite } from './crowdedSite';
import { onBuiltApp } from './onBuiltApp';
import { grasp, middleOf, openFile, type Spot } from './openCrowded';
import { recordPages, type Watched } from './pageRecorder';

const SEED = 2026;
const FRAME_MS = 1000 / 60;
const GESTURE_MS = 3000;
/** Long enough for a document to be written when the hand has let go. */
const SETTLE_MS = 1500;
/** Gestures go round a circle of this radius on the screen, in pixels, once in so many moves. */
const CIRCLE = { radius: 120, moves: 90 };
const WHEEL_STEP_PX = 20;
const WHEEL_TURNS = 15;

/** Most milliseconds between two frames, for 95 of 100, by the number of features. */
const SIZES = [
  { features: 2_000, targetMs: 20 },
  { features: 10_000, targetMs: 50 },
] as const;

type Gesture = { readonly name: string; readonly move: (page: Page, n: number, at: Spot) => Promise<void> };

const round = ({ x, y }: Spot, n: number): Spot => {
  const angle = (2 * Math.PI * n) / CIRCLE.moves;
  return { x: x + CIRCLE.radius * Math.sin(angle), y: y + CIRCLE.radius * (1 - Math.cos(angle)) };
};
const moveRound = (page: Page, n: number, at: Spot) => {
  const { x, y } = round(at, n);
  return page.mouse.move(x, y);
};
const GESTURES: readonly Gesture[] = [
  { name: 'pan', move: moveRound },
  {
    name: 'zoom',
    move: (page, n) =>
      page.mouse.wheel(0, Math.floor(n / WHEEL_TURNS) % 2 === 0 ? -WHEEL_STEP_PX : WHEEL_STEP_PX),
  },
  { name: 'drag', move: moveRound },
];

await onBuiltApp(async ({ app, context }) => {
  let met = true;
  for (const { features, targetMs } of SIZES)
    met = (await measure(context, app.origin, features, targetMs)) && met;
  return met;
});

/** Opens a yard of so many features and tells each gesture's frames; whether every goal was met. */
async function measure(
  context: BrowserContext,
  origin: string,
  features: number,
  targetMs: number,
): Promise<boolean> {
  const page = await context.newPage();
  await recordPages(page);
  await openFile(page, origin, crowdedSite(features, SEED));
  let met = true;
  for (const gesture of GESTURES) {
    await page.keyboard.press('Escape');
    await page.keyboard.press('0');
    const at = await middleOf(page);
    if (gesture.name === 'drag') await grasp(page, at);
    await settled(page);
    const { frames, writes, commits } = await watch(page, gesture, at);
    const [median, p95, worst] = [0.5, 0.95, 1].map((share) => quantile(frames, share)) as [
      number,
      number,
      number,
    ];
    console.log(
      `${gesture.name}: ${frames.length} frames, median ${median.toFixed(1)} ms, worst ${worst.toFixed(1)} ms, ` +
        `${lateShare(frames, targetMs).toFixed(0)} % of the time in late ones; ${commits} commits of React, ${writes} writes`,
    );
    const name = `${gesture.name} among ${features.toLocaleString('en-US')} things: time between frames, 95 of 100`;
    met =
      tell({
        name,
        value: p95,
        unit: 'ms',
        goal: { under: targetMs },
        ratio: { to: 'a frame at 60 Hz', times: p95 / FRAME_MS },
      }) && met;
    // a drag must save the document once, when the hand lets go
    if (gesture.name === 'drag' && writes !== 1) {
      console.log(`a drag was written ${writes} times`);
      met = false;
    }
  }
  await page.close();
  return met;
}

/** Waits until what came before has been painted: twenty frames in a row without a stumble. */
async function settled(page: Page): Promise<void> {
  await page.waitForTimeout(SETTLE_MS);
  await page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        let [smooth, last] = [0, performance.now()];
        const onFrame = (time: number) => {
          smooth = time - last < 25 ? smooth + 1 : 0;
          last = time;
          if (smooth === 20) resolve();
          else requestAnimationFrame(onFrame);
        };
        requestAnimationFrame(onFrame);
      }),
  );
}

/** Makes a gesture for GESTURE_MS. A pan starts beside what is in the middle; the wheel turns over it; a drag holds it. */
async function watch(page: Page, gesture: Gesture, middle: Spot): Promise<Watched> {
  const at = gesture.name === 'pan' ? { x: middle.x, y: middle.y + 30 } : middle;
  await page.mouse.move(at.x, at.y);
  if (gesture.name !== 'zoom') await page.mouse.down();
  await page.evaluate(() => window.recorder.start());
  const end = performance.now() + GESTURE_MS;
  for (let n = 0; performance.now() < end; n++) await gesture.move(page, n, at);
  const during = await page.evaluate(() => window.recorder.stop());
  const writesBefore = await page.evaluate(() => window.recorder.writes());
  if (gesture.name !== 'zoom') await page.mouse.up();
  await page.waitForTimeout(SETTLE_MS);
  const writesAfter = await page.evaluate(() => window.recorder.writes());
  return { ...during, writes: during.writes + writesAfter - writesBefore };
}

/** Percent of the time that went by in frames longer than `most` ms: one long stop weighs what it lasts. */
function lateShare(frames: readonly number[], most: number): number {
  const sum = (list: readonly number[]) => list.reduce((total, ms) => total + ms, 0);
  return (100 * sum(frames.filter((ms) => ms > most))) / sum(frames);
}
