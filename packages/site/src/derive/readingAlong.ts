import { cableFromCounter, entryLeg } from '@footmark/geometry';
import { factorOf, type Reading, type Run } from '../document/run';
import { type Finding, finding, type Target } from './finding';
import type { RunCorrection } from './standingFit';

/** How a reading became a cable length, and that a length along the pipe. Metres. */
export type ReadingTrace = {
  /** What the counter showed, and what it would have shown had it never been set anew. */
  readonly counter: number;
  readonly counted: number;
  readonly zero: number;
  readonly scale: number;
  readonly cable: number;
  readonly riser: number | null;
  readonly sweepRadius: number | null;
  /** Cable used between the zero and the pipe. */
  readonly entryLeg: number;
  /** Along the pipe from the entry to where the counter was zeroed: 0 but for a zero at a point of the plan. */
  readonly start: number;
  /** How far the lens was ahead of what stood at the zero. */
  readonly ahead: number;
  /** Of the lens; the sonde in the tail is `tail` behind it. */
  readonly along: number;
  readonly tail: number;
  /** Zero, scale, entry leg and count are as the fit that was taken made them. */
  readonly fitted: boolean;
};

/** A riser comes down square to the pipe and turns into it. */
const RISER_SWEEP_ANGLE = Math.PI / 2;

/**
 * The cable length along the pipe at each reading, in their order; null with a finding where there is none
 * (before the zero, or still in the riser). A new zero shifts the count of all readings after it. `start`: see `ReadingTrace`.
 */
export function readingsAlong(
  run: Run,
  { start, correction }: { readonly start: number; readonly correction: RunCorrection | null },
  findings: Finding[],
): readonly { readonly reading: Reading; readonly trace: ReadingTrace; readonly inPipe: boolean }[] {
  const leg = correction?.entryLeg ?? entryLegOf(run);
  const zero = correction?.zero ?? run.zero.counter;
  const scale = correction?.scale ?? factorOf(run.scale);
  const ahead = run.head.zeroed === 'tail' ? run.head.length : 0;
  if (run.zero.at === 'rim' && run.zero.riser < run.zero.sweepRadius) {
    const { riser, sweepRadius } = run.zero;
    findings.push(
      finding('sweep-does-not-fit', 'warning', { kind: 'run', id: run.id }, { riser, sweepRadius }),
    );
  }
  let shift = 0;
  let before: Reading | null = null;
  return run.readings.map((reading) => {
    const at: Target = { kind: 'reading', run: run.id, id: reading.id };
    const countedOn = before === null ? -Infinity : (before.newZero ?? before.counter);
    if (before !== null && reading.counter < countedOn) {
      findings.push(
        finding('counter-went-back', 'warning', at, {
          reading: reading.counter,
          before: `${run.letter}${before.number}`,
          beforeReading: countedOn,
        }),
      );
    }
    before = reading;
    const total = reading.counter + shift;
    if (reading.newZero !== undefined) shift = total - reading.newZero;
    const corrected = correction?.counters.get(reading.id);
    const counted = corrected?.read === total ? corrected.counted : total;
    const cable = cableFromCounter({ reading: counted, zero, scale });
    const along = start + cable - leg + ahead;
    const trace: ReadingTrace = {
      counter: reading.counter,
      counted,
      zero,
      scale,
      cable,
      riser: run.zero.at === 'rim' ? run.zero.riser : null,
      sweepRadius: run.zero.at === 'rim' ? run.zero.sweepRadius : null,
      entryLeg: leg,
      start,
      ahead,
      along,
      tail: run.head.length,
      fitted: correction !== null,
    };
    // before a zero at a point of the plan there may be pipe
    const beforeZero = cable < 0 && (run.zero.at !== 'point' || along < 0);
    if (beforeZero) {
      findings.push(finding('reading-before-zero', 'error', at, { reading: counted, zero }));
    } else if (along < 0) {
      findings.push(finding('reading-in-riser', 'error', at, { short: -along }));
    }
    return { reading, trace, inPipe: !beforeZero && along >= 0 };
  });
}

/** Cable (m) between the counter's zero and the pipe, at least 0: a sweep that saves more than its riser is long does not fit in it. */
export function entryLegOf(run: Run): number {
  if (run.zero.at !== 'rim') return 0;
  const { riser, sweepRadius } = run.zero;
  return Math.max(0, entryLeg({ riserDrop: riser, sweepRadius, sweepAngle: RISER_SWEEP_ANGLE }));
}
