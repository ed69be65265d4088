import { parentPort, workerData } from 'node:worker_threads';
import type { FuzzReader } from './reader';
import { readInputs } from './readInputs';
import type { FuzzJob } from './tally';

const job = workerData as FuzzJob; // who starts it gives nothing else
const { reader } = (await import(job.module)) as { readonly reader: FuzzReader };
await readInputs(reader, job, (fault) => parentPort?.postMessage(fault));
