// `npm start`: install, build, and serve the built app on this machine until stopped.
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { install } from './install.mjs';
import { APP, commandFile, readJson } from './paths.mjs';
import { choosePort } from './port.mjs';
import { onStop, runNode, stopWithSignals } from './run.mjs';

stopWithSignals();

/** The app's own Vite, as a library. @returns {Promise<any>} */
function loadVite() {
  const home = join(APP, 'node_modules', 'vite');
  const { exports } = readJson(join(home, 'package.json'));
  const door = exports['.'];
  return import(pathToFileURL(join(home, typeof door === 'string' ? door : door.default)).href);
}

async function start() {
  // Asked twice: a wrong wish is told before the long part, and the port may be taken meanwhile.
  await choosePort(process.env.FOOTMARK_PORT);
  const problem = await install();
  if (problem !== null) throw new Error(problem);
  const code = await runNode(commandFile(APP, 'vite', 'vite'), ['build'], { cwd: APP });
  if (code !== 0) throw new Error(`The build failed (vite ended with ${code}): see the lines above.`);
  const port = await choosePort(process.env.FOOTMARK_PORT);
  const { preview } = await loadVite();
  // The address in figures is met under both names; `localhost` may mean only ::1 here.
  const server = await preview({
    root: APP,
    logLevel: 'warn',
    preview: { host: '127.0.0.1', port, strictPort: true, open: false },
  });
  onStop(() => server.close());
  // A relative base ('./') is served at the root.
  const base = String(server.config.base);
  console.log(
    `\nFootmark is at http://localhost:${port}${base.startsWith('/') ? base : '/'}  (Ctrl+C stops it)`,
  );
}

try {
  await start();
} catch (error) {
  console.error(`Footmark did not start. ${error instanceof Error ? error.message : String(error)}`);
  process.exit(1);
}
