import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const APP = fileURLToPath(new URL('../../app', import.meta.url));

export type ServedApp = { readonly origin: string; readonly stop: () => void };

/** Serves the built app on a port of its own; throws when it is not built, or does not answer within ten seconds. */
export async function serveApp(port: number): Promise<ServedApp> {
  if (!existsSync(`${APP}/dist/index.html`))
    throw new Error('There is no built app in app/dist: run pnpm build first.');
  const vite = ['node_modules/vite/bin/vite.js', 'preview', '--host', '127.0.0.1', '--port', String(port)];
  const server: ChildProcess = spawn(process.execPath, [...vite, '--strictPort'], {
    cwd: APP,
    stdio: 'ignore',
  });
  const origin = `http://127.0.0.1:${port}`;
  const stop = () => void server.kill();
  for (let tries = 0; tries < 100; tries++) {
    const answer = await fetch(origin).catch(() => null);
    if (answer?.ok) return { origin, stop };
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  stop();
  throw new Error(`nothing answers on port ${port}`);
}
