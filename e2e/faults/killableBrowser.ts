import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { type Browser, chromium } from '@playwright/test';
import { quietBrowser } from '../src/quietBrowser';

const PATIENCE_MS = 30_000;

/** A browser with a profile on the disk that outlives it. */
export type KillableBrowser = {
  readonly browser: Browser;
  /** Ends all its processes at once, as a power cut to the browser does (SIGKILL): none of them gets to write anything more. */
  readonly kill: () => Promise<void>;
};

export async function startKillable(profile: string): Promise<KillableBrowser> {
  const portFile = join(profile, 'DevToolsActivePort');
  rmSync(portFile, { force: true });
  for (const lock of ['SingletonLock', 'SingletonCookie', 'SingletonSocket'])
    rmSync(join(profile, lock), { force: true });
  const child = spawn(
    quietBrowser.executablePath,
    [
      ...quietBrowser.args,
      '--headless=new',
      '--remote-debugging-port=0',
      `--user-data-dir=${profile}`,
      '--window-size=1440,900',
      '--lang=en-US',
      'about:blank',
    ],
    // a process group of its own, so that its children die with it
    { detached: true, stdio: 'ignore' },
  );
  const port = await portIn(portFile, child);
  const browser = await chromium.connectOverCDP(`http://127.0.0.1:${port}`);
  return {
    browser,
    kill: async () => {
      const gone = new Promise((exit) => child.once('exit', exit));
      if (child.pid !== undefined) process.kill(-child.pid, 'SIGKILL');
      await gone;
      await browser.close().catch(() => {}); // only the connection is left
    },
  };
}

async function portIn(file: string, child: ChildProcess): Promise<string> {
  const until = Date.now() + PATIENCE_MS;
  while (Date.now() < until) {
    const port = existsSync(file) ? readFileSync(file, 'utf8').split('\n')[0] : '';
    if (port !== undefined && port !== '') return port;
    if (child.exitCode !== null) throw new Error(`the browser ended with ${child.exitCode}`);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error('the browser gives no port to speak to');
}
