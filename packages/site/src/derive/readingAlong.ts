import { cableFromCounter, entryLeg } from '@footmark/geometry';
import type { Reading, Run } from '../document/run';
import { type Finding, finding, type Target } from './finding';

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
  readonly along: number;
};

/** A riser comes down square to the pipe and turns into it. */
const RISER_SWEEP_ANGLE = Math.PI / 2;

/**
 * The cable length along the pipe at each reading, in their order; null with a finding where there is none
 * (before the zero, or still in the riser). A new zero shifts the count of all readings after it.
 */
export function readingsAlong(
  run: Run,
  findings: Finding[],
): readonly { readonly reading: Reading; readonly trace: ReadingTrace; readonly inPipe: boolean }[] {
  const leg = entryLegOf(run);
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
    const counted = reading.counter + shift;
    if (reading.newZero !== undefined) shift = counted - reading.newZero;
    const cable = cableFromCounter({ reading: counted, zero: run.zero.counter, scale: run.scale });
    const along = cable - leg;
    const trace: ReadingTrace = {
      counter: reading.counter,
      counted,
      zero: run.zero.counter,
      scale: run.scale,
      cable,
      riser: run.zero.at === 'rim' ? run.zero.riser : null,
      sweepRadius: run.zero.at === 'rim' ? run.zero.sweepRadius : null,
      entryLeg: leg,
      along,
    };
    if (cable < 0) {
      findings.push(
        finding('reading-before-zero', 'error', at, { reading: counted, zero: run.zero.counter }),
      );
    } else if (along < 0) {
      findings.push(finding('reading-in-riser', 'error', at, { short: -along }));
    }
    return { reading, trace, inPipe: cable >= 0 && along >= 0 };
  });
}

/** Cable (m) between the counter's zero and the pipe, at least 0: a sweep that saves more than its riser is long does not fit in it. */
export function entryLegOf(run: Run): number {
  if (run.zero.at !== 'rim') return 0;
  const { riser, sweepRadius } = run.zero;
  return Math.max(0, entryLeg({ riserDrop: riser, sweepRadius, sweepAngle: RISER_SWEEP_ANGLE }));
}
