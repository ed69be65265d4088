import { describe, expect, it } from 'vitest';
import { fuzzReader } from './fuzzReader';
import type { FuzzReader } from './reader';
import { otherReaders, readersOfFiles } from './readers/names';
import { readInputs } from './readInputs';
import { type Fault, newCounts, tallyOf } from './tally';

// The first inputs of what `pnpm fuzz all` puts before the readers; and that a fault is found at all.

const SEED = 20_261_126;
/** What takes longer than this (ms) does not end: how long an input may take is looked at in `pnpm fuzz`, on a machine that is not busy. */
const ENDLESS_MS = 20_000;

async function fuzzed(path: string, inputs: number, hangMs = ENDLESS_MS) {
  const faults: Fault[] = [];
  const module = new URL(path, import.meta.url);
  const tally = await fuzzReader({ module, seed: SEED, inputs, hangMs, onFault: (f) => faults.push(f) });
  return { tally, faults };
}

describe('mutated inputs are read whole or refused', () => {
  // in this thread, where all that the readers need is loaded once
  it.each([...readersOfFiles, ...otherReaders])('%s', async (name) => {
    const { reader } = (await import(`./readers/${name}.ts`)) as { readonly reader: FuzzReader };
    const [inputs, counts, faults] = [50, newCounts(), [] as Fault[]];
    const job = { seed: SEED, from: 0, to: inputs, hangMs: ENDLESS_MS, counts };
    await readInputs(reader, job, (fault) => faults.push(fault));
    expect(faults).toEqual([]);
    const tally = tallyOf(counts, inputs);
    expect(tally).toMatchObject({ crashes: 0, hangs: 0, partial: 0 });
    expect(tally.accepted).toBeGreaterThan(0);
    expect(tally.refused).toBeGreaterThan(0);
    expect(tally.accepted + tally.refused).toBe(inputs);
  });
});

describe('a faulty reader is found', () => {
  it('one that throws', async () => {
    const { tally, faults } = await fuzzed('./faulty/throws.ts', 20);
    expect(tally.crashes).toBeGreaterThan(0);
    expect(tally).toMatchObject({ hangs: 0, partial: 0, accepted: 20 - tally.crashes });
    expect(faults[0]).toMatchObject({ is: 'crash', why: expect.stringContaining('TypeError: no number') });
  });

  it('one that loops for ever, and what comes behind it is read', async () => {
    const { tally, faults } = await fuzzed('./faulty/loops.ts', 30, 40);
    expect(tally.hangs).toBeGreaterThan(0);
    expect(tally).toMatchObject({ crashes: 0, partial: 0, accepted: 30 - tally.hangs });
    expect(tally.accepted).toBeGreaterThan(0);
    expect(faults.every(({ is }) => is === 'hang')).toBe(true);
  });

  it('one that drops half', async () => {
    const { tally, faults } = await fuzzed('./faulty/drops.ts', 20);
    expect(tally.partial).toBeGreaterThan(0);
    expect(tally).toMatchObject({ crashes: 0, hangs: 0, accepted: 20 });
    expect(faults[0]?.why).toMatch(/^\d+ of \d+$/);
  });
});
