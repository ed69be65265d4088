import { describe, expect, it } from 'vitest';
import { push } from '../testing/yard';
import type { Finding } from './finding';
import { entryLegOf, readingsAlong } from './readingAlong';

function along(...args: Parameters<typeof push>) {
  const findings: Finding[] = [];
  const readings = readingsAlong(push(...args), { start: 0, correction: null }, findings);
  return {
    along: readings.map((r) => r.trace.along),
    inPipe: readings.map((r) => r.inPipe),
    findings,
    readings,
  };
}

describe('readingsAlong', () => {
  it('counts from the zero, at the true length of a count', () => {
    expect(
      along({ zero: { at: 'in-pipe', counter: 2 }, scale: { by: 'said', factor: 1.5 } }, [2, 4, 10]).along,
    ).toEqual([0, 3, 12]);
  });

  it('takes off a riser, which costs less than its drop by what the sweep saves', () => {
    const zero = { at: 'rim', counter: 0, riser: 1.5, sweepRadius: 0.3 } as const;
    // 1.5 − 0.3·(2·tan 45° − π/2) = 1.5 − 0.3·0.4292 = 1.3712
    expect(entryLegOf(push({ zero }))).toBeCloseTo(1.371238898, 9);
    const { along: found, readings } = along({ zero }, [10]);
    expect(found[0]).toBeCloseTo(8.628761102, 9);
    expect(readings[0]?.trace).toMatchObject({ cable: 10, riser: 1.5, sweepRadius: 0.3 });
  });

  it('needs nothing to reach the pipe from the base of a stack', () => {
    expect(along({ zero: { at: 'stack-base', counter: 1 } }, [3]).along).toEqual([2]);
  });

  it('a riser too short for its sweep takes nothing off: no mark is moved forward by it', () => {
    const zero = { at: 'rim', counter: 5, riser: 0, sweepRadius: 0.2286 } as const;
    const { along: found, inPipe, findings, readings } = along({ zero }, [4.98, 5, 8]);
    expect(readings[2]?.trace.entryLeg).toBe(0);
    expect([found[1], found[2]]).toEqual([0, 3]);
    expect(inPipe).toEqual([false, true, true]);
    expect(findings).toMatchObject([
      {
        code: 'sweep-does-not-fit',
        severity: 'warning',
        at: { kind: 'run', id: 'run' },
        values: { riser: 0, sweepRadius: 0.2286 },
      },
      { code: 'reading-before-zero', at: { id: 'r1' } },
    ]);
    const fits = along({ zero: { at: 'rim', counter: 0, riser: 0.2286, sweepRadius: 0.2286 } }, [1]);
    expect(fits.findings).toEqual([]);
  });

  it('says that a reading is still in the riser, and by how much', () => {
    const { inPipe, findings } = along(
      { zero: { at: 'rim', counter: 0, riser: 2, sweepRadius: 0 } },
      [1.25, 2],
    );
    expect(inPipe).toEqual([false, true]);
    expect(findings).toMatchObject([
      { code: 'reading-in-riser', severity: 'error', at: { id: 'r1' }, values: { short: 0.75 } },
    ]);
  });

  it('says that a reading is before the zero', () => {
    const { inPipe, findings } = along({ zero: { at: 'in-pipe', counter: 5 } }, [4, 5]);
    expect(inPipe).toEqual([false, true]);
    expect(findings).toMatchObject([{ code: 'reading-before-zero', values: { reading: 4, zero: 5 } }]);
  });

  it('counts on after the counter was set anew, twice', () => {
    const {
      along: found,
      readings,
      findings,
    } = along({}, [10, { counter: 12, newZero: 0 }, 3, { counter: 4, newZero: 100 }, 101]);
    expect(found).toEqual([10, 12, 15, 16, 17]);
    expect(readings[4]?.trace).toMatchObject({ counter: 101, counted: 17 });
    expect(findings).toEqual([]);
  });

  it('warns when the counter went back, also behind a new zero', () => {
    const { findings } = along({}, [10, 8, { counter: 9, newZero: 2 }, 1]);
    expect(findings).toMatchObject([
      {
        code: 'counter-went-back',
        at: { id: 'r2' },
        values: { reading: 8, before: 'A1', beforeReading: 10 },
      },
      { code: 'counter-went-back', at: { id: 'r4' }, values: { reading: 1, before: 'A3', beforeReading: 2 } },
    ]);
  });

  it('scales by a length that was counted: 10 counted for 10.5 true', () => {
    const scale = { by: 'calibration', counted: 10, actual: 10.5 } as const;
    expect(along({ scale }, [10, 20]).along).toEqual([10.5, 21]);
  });

  it('has the lens ahead by the length of the head when its tail stood at the zero, and only then', () => {
    const head = (zeroed: 'lens' | 'tail') => along({ head: { length: 0.25, zeroed } }, [4]);
    expect(head('lens').along).toEqual([4]);
    expect(head('tail').along).toEqual([4.25]);
    expect(head('lens').readings[0]?.trace).toMatchObject({ ahead: 0, tail: 0.25 });
    expect(head('tail').readings[0]?.trace).toMatchObject({ ahead: 0.25, tail: 0.25 });
  });

  it('counts on from where it was zeroed', () => {
    const run = push({ zero: { at: 'point', counter: 2, point: { of: 'main', at: 'b' } } }, [2, 5]);
    const found = readingsAlong(run, { start: 10, correction: null }, []);
    expect(found.map((r) => [r.trace.along, r.trace.start, r.inPipe])).toEqual([
      [10, 10, true],
      [13, 10, true],
    ]);
  });

  it('takes zero, scale, entry leg and counts from a fit', () => {
    const run = push({ zero: { at: 'rim', counter: 1, riser: 2, sweepRadius: 0 } }, [5, 9]);
    const correction = {
      zero: 1.5,
      scale: 2,
      entryLeg: 3,
      counters: new Map([['r2', { read: 9, counted: 9.25 }]]),
    };
    const found = readingsAlong(run, { start: 0, correction }, []);
    // 2·(5 − 1.5) − 3 and 2·(9.25 − 1.5) − 3
    expect(found.map((r) => r.trace.along)).toEqual([4, 12.5]);
    expect(found[1]?.trace).toMatchObject({ counter: 9, counted: 9.25, fitted: true });
  });
});
