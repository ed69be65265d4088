import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium } from '@playwright/test';
import { quietBrowser } from '../src/quietBrowser';
import { type ServedApp, serveApp } from '../src/servedApp';

const PORT = Number(process.env.FOOTMARK_BENCH_PORT ?? 4392);
const DESK = { width: 1440, height: 900 };

export type Bench = { readonly app: ServedApp; readonly context: BrowserContext };

/**
 * Serves the built app and opens a browser whose storage lies on the disk, as on a device, for as long as `work` takes. `work` says whether
 * every goal was met; so does the exit code.
 */
export async function onBuiltApp(
  work: (bench: Bench) => Promise<boolean>,
  args: readonly string[] = [],
): Promise<void> {
  const app = await serveApp(PORT);
  const profile = mkdtempSync(join(tmpdir(), 'footmark-bench-'));
  let context: BrowserContext | undefined;
  try {
    context = await chromium.launchPersistentContext(profile, {
      ...quietBrowser,
      args: [...quietBrowser.args, ...args],
      viewport: DESK,
      locale: 'en-US',
    });
    // tsx wraps named functions in a helper of its own, which the page does not have
    await context.addInitScript('globalThis.__name = (named) => named');
    console.log(`Chromium ${context.browser()?.version() ?? ''}, software rendering`);
    process.exitCode = (await work({ app, context })) ? 0 : 1;
  } finally {
    await context?.close();
    app.stop();
    rmSync(profile, { recursive: true, force: true });
  }
}
