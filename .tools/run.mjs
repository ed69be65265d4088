// Running other programs, and stopping with all of them.
import { spawn } from 'node:child_process';
import { cleanEnvironment } from './environment.mjs';

const WINDOWS = process.platform === 'win32';
/** @type {Readonly<Partial<Record<NodeJS.Signals, number>>>} */
const CODE_OF = { SIGINT: 130, SIGTERM: 143, SIGHUP: 129 };
/** How often to look whether npm is still there, and how long a child gets to stop by itself; milliseconds. */
const WATCH_MS = 500;
const GRACE_MS = 5000;

/** @type {Set<import('node:child_process').ChildProcess>} */
const children = new Set();
/** @type {Set<() => Promise<void>>} */
const closers = new Set();
let stopping = false;

/**
 * Runs a program with its output shown as it comes. It gets a process group of its own, so that a stop reaches its children.
 *
 * @param {string} program
 * @param {readonly string[]} args
 * @param {{ cwd?: string, env?: NodeJS.ProcessEnv, shell?: boolean }} [options]
 * @returns {Promise<number>} its exit code; 127 when it could not be started
 */
export function run(program, args, { cwd, env, shell = false } = {}) {
  return new Promise((resolve) => {
    // Once stopping, nobody is told that a program has ended: the next step must not begin.
    if (stopping) return;
    const child = spawn(program, args, {
      ...(cwd === undefined ? {} : { cwd }),
      env: { ...cleanEnvironment(), ...env },
      stdio: ['ignore', 'inherit', 'inherit'],
      detached: !WINDOWS,
      shell,
    });
    children.add(child);
    const end = (/** @type {number} */ code) => {
      children.delete(child);
      if (!stopping) resolve(code);
    };
    child.once('error', (error) => {
      console.error(`${program} could not be started: ${error.message}`);
      end(127);
    });
    child.once('exit', (code, signal) => end(code ?? CODE_OF[signal ?? 'SIGTERM'] ?? 1));
  });
}

/** Runs a script with this Node. @param {string} file @param {readonly string[]} args @param {{ cwd?: string, env?: NodeJS.ProcessEnv }} [options] */
export function runNode(file, args, options) {
  return run(process.execPath, [file, ...args], options);
}

/** Runs npm or npx, which are `.cmd` files on Windows. @param {string} program @param {readonly string[]} args @param {{ cwd?: string, env?: NodeJS.ProcessEnv }} [options] */
export function runNpm(program, args, options) {
  return run(program, args, { ...options, shell: WINDOWS });
}

/** What else to close before the process ends on a signal. @param {() => Promise<void>} close */
export function onStop(close) {
  closers.add(close);
}

/** @param {NodeJS.Signals} signal */
function signalChildren(signal) {
  for (const child of children) {
    if (child.pid === undefined) continue;
    try {
      if (WINDOWS) child.kill(signal);
      else process.kill(-child.pid, signal);
    } catch {
      // It has ended meanwhile.
    }
  }
}

/** @param {'SIGINT' | 'SIGTERM' | 'SIGHUP'} signal */
async function stop(signal) {
  if (stopping) return;
  stopping = true;
  signalChildren(signal);
  const deadline = Date.now() + GRACE_MS;
  while (children.size > 0 && Date.now() < deadline) await new Promise((wake) => setTimeout(wake, 50));
  signalChildren('SIGKILL');
  await Promise.all([...closers].map((close) => close()));
  process.exit(CODE_OF[signal]);
}

/**
 * Passes SIGINT, SIGTERM and SIGHUP on to everything started here, then ends. A signal to npm stops at the shell between npm and
 * this process, so under npm the loss of the parent counts as SIGTERM.
 */
export function stopWithSignals() {
  for (const signal of /** @type {const} */ (['SIGINT', 'SIGTERM', 'SIGHUP']))
    process.on(signal, () => void stop(signal));
  if (process.env.npm_lifecycle_event === undefined || WINDOWS) return;
  const parent = process.ppid;
  setInterval(() => {
    if (process.ppid !== parent) void stop('SIGTERM');
  }, WATCH_MS).unref();
}
