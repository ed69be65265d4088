import { Worker } from 'node:worker_threads';
import { AT, type Fault, type FuzzJob, HANG_MS, newCounts, type Tally, tallyOf } from './tally';

/** How often it is looked whether the thread goes on (ms). */
const LOOK_MS = 50;
/** A thread that is so many times as long at one input as one may be is ended; one that comes back before has counted that itself. */
const END_AFTER = 3;

const OUT_OF_MEMORY = 'ERR_WORKER_OUT_OF_MEMORY';

export type FuzzSetting = {
  /** The address of a file that exports a `reader`. */
  readonly module: URL;
  readonly seed: number;
  readonly from?: number;
  readonly inputs: number;
  /** An input that takes longer (ms) hangs; `HANG_MS` without it. */
  readonly hangMs?: number;
  readonly onFault?: (fault: Fault) => void;
  /** Some times a second: how many inputs are done. */
  readonly onProgress?: (done: number) => void;
};

/** Puts mutated inputs before one reader, in a thread that is ended where it hangs and begun again behind that input. */
export async function fuzzReader(setting: FuzzSetting): Promise<Tally> {
  const { module, seed, from = 0, inputs, hangMs = HANG_MS, onFault } = setting;
  const counts = newCounts();
  const to = from + inputs;
  for (let next = from; next < to; ) {
    Atomics.store(counts, AT.reading, 0);
    Atomics.store(counts, AT.next, next);
    const ended = await oneThread({ module: module.href, seed, from: next, to, hangMs, counts }, setting);
    next = Atomics.load(counts, AT.next);
    if (ended === 'done') continue;
    Atomics.add(counts, ended.is === 'hang' ? AT.hangs : AT.crashes, 1);
    onFault?.({ ...ended, number: next });
    next += 1;
  }
  return tallyOf(counts, inputs);
}

/** Runs a thread to its end, or until an input hangs or fills the memory; rejects where the fuzzer itself fails. */
function oneThread(
  job: FuzzJob,
  { onFault, onProgress, from = 0 }: FuzzSetting,
): Promise<'done' | Omit<Fault, 'number'>> {
  const endMs = END_AFTER * job.hangMs;
  return new Promise((resolve, reject) => {
    const worker = new Worker(new URL('./fuzzWorker.mjs', import.meta.url), { workerData: job });
    let hung = false;
    let [seen, clock, processor] = [-1, 0, 0];
    const look = setInterval(() => {
      const next = Atomics.load(job.counts, AT.next);
      const used = process.cpuUsage();
      const now = (used.user + used.system) / 1000;
      onProgress?.(next - from);
      if (next !== seen || Atomics.load(job.counts, AT.reading) === 0) {
        [seen, clock, processor] = [next, performance.now(), now];
      } else if (performance.now() - clock > endMs && now - processor > endMs && !hung) {
        hung = true;
        void worker.terminate();
      }
    }, LOOK_MS);
    worker.on('message', (fault: Fault) => onFault?.(fault));
    worker.on('error', (error: NodeJS.ErrnoException) => {
      if (error.code === OUT_OF_MEMORY) resolve({ is: 'crash', why: error.message });
      else reject(error);
    });
    worker.on('exit', (code) => {
      clearInterval(look);
      if (hung) resolve({ is: 'hang', why: `ended after ${endMs} ms` });
      else if (code === 0 && Atomics.load(job.counts, AT.next) >= job.to) resolve('done');
      else reject(new Error(`the thread ended with ${code} at input ${Atomics.load(job.counts, AT.next)}`));
    });
  });
}
