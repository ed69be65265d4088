import { mutatedInput } from './mutate/mutated';
import type { FuzzReader } from './reader';
import { AT, type Fault, type FuzzJob } from './tally';

const processorMs = () => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

/**
 * Reads the inputs of a job one after the other, in this thread. Where it is stands in the shared counts, because a thread that hangs says nothing
 * else. Throws where a sound input is not read: nothing would be tested.
 */
export async function readInputs(
  reader: FuzzReader,
  { seed, from, to, hangMs, counts }: Omit<FuzzJob, 'module'>,
  onFault: (fault: Fault) => void,
): Promise<void> {
  await reader.ready?.();
  const seeds = reader.seeds();
  for (const [i, sound] of seeds.entries()) {
    const read = reader.read(sound);
    const wrong = read.accepted ? reader.judge(sound, read) : 'refused';
    if (wrong !== null) throw new Error(`${reader.name}: its sound input ${i} is ${wrong}`);
  }

  const count = (place: number) => Atomics.add(counts, place, 1);
  const found = (fault: Fault) => {
    count(fault.is === 'crash' ? AT.crashes : fault.is === 'hang' ? AT.hangs : AT.partial);
    onFault(fault);
  };
  for (let number = from; number < to; number += 1) {
    Atomics.store(counts, AT.next, number);
    const input = mutatedInput(reader, seeds, seed, number);
    const [clock, processor] = [performance.now(), processorMs()];
    let read: { readonly accepted: boolean } | null = null;
    Atomics.store(counts, AT.reading, 1);
    try {
      read = reader.read(input);
    } catch (error) {
      const why = error instanceof Error ? (error.stack ?? error.message) : String(error);
      found({ is: 'crash', number, why });
    }
    Atomics.store(counts, AT.reading, 0);
    const took = Math.min(performance.now() - clock, processorMs() - processor);
    if (took > hangMs) found({ is: 'hang', number, why: `${took.toFixed(0)} ms` });
    if (read === null) continue;
    count(read.accepted ? AT.accepted : AT.refused);
    const wrong = read.accepted ? reader.judge(input, read) : null;
    if (wrong !== null) found({ is: 'partial', number, why: wrong });
  }
  Atomics.store(counts, AT.next, to);
}
