// The app with hot reload: `node .tools/dev.mjs [arguments for vite]`.
import { APP, commandFile } from './paths.mjs';
import { runNode, stopWithSignals } from './run.mjs';

stopWithSignals();
process.exitCode = await runNode(commandFile(APP, 'vite', 'vite'), process.argv.slice(2), { cwd: APP });
