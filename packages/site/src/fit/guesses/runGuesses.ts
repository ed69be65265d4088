import { counterSigma, scaleSigma } from '../../derive/alongSigma';
import type { Run } from '../../document/run';
import { sigmaOf } from '../../rules/sigmaOf';
import type { Net } from '../net';
import { pointSigmas } from '../pointSigma';
import type { Tagged } from '../tagged';

/** What was said of the runs, and the counts that evidence hangs on. */
export function* runGuesses({ site, derived, runs, marks, counters, start }: Net): Generator<Tagged> {
  const sigmaOfPoint = pointSigmas(site, derived.points);
  const zeroSigma = (run: Run, atNode: boolean): number => {
    const zero = sigmaOf(site, 'zero');
    if (run.zero.at === 'point')
      return Math.hypot(zero, sigmaOf(site, 'sameThing'), atNode ? 0 : sigmaOfPoint(run.zero.point));
    const entry = derived.features.get(run.entry ?? '')?.feature;
    // a pipe that is tied to its entry starts there wherever that is
    const tied = derived.paths.get(run.path ?? '')?.tiedTo.includes(run.entry) ?? false;
    if (tied || entry === undefined) return zero;
    return Math.hypot(zero, sigmaOfPoint({ of: entry.id, at: entry.vertices[0]?.id ?? '' }));
  };
  for (const { run, scale, zero, entryLeg, origin } of runs.values()) {
    const said = start[scale] ?? 1;
    yield {
      tag: { is: 'scale', run: run.id },
      observation: {
        kind: 'coordinate',
        id: `scale/${run.id}`,
        unknown: scale,
        value: said,
        sigma: scaleSigma(site, run),
      },
    };
    yield {
      tag: { is: 'zero', run: run.id },
      observation: {
        kind: 'coordinate',
        id: `zero/${run.id}`,
        unknown: zero,
        value: run.zero.counter,
        sigma: zeroSigma(run, origin !== null) / said,
      },
    };
    if (entryLeg !== null) {
      yield {
        tag: { is: 'riser', run: run.id },
        observation: {
          kind: 'coordinate',
          id: `riser/${run.id}`,
          unknown: entryLeg,
          value: start[entryLeg] ?? 0,
          sigma: sigmaOf(site, 'riser'),
        },
      };
    }
  }
  for (const [reading, unknown] of counters) {
    const mark = marks.get(reading);
    if (mark === undefined) continue;
    yield {
      tag: { is: 'counter', run: mark.run.id, reading },
      observation: {
        kind: 'coordinate',
        id: `counter/${mark.run.id}/${reading}`,
        unknown,
        value: mark.trace.counted,
        sigma: counterSigma(site, mark.run.resolution),
      },
    };
  }
}
