import { counterSigma, scaleSigma } from '../../derive/alongSigma';
import { sigmaOf } from '../../rules/sigmaOf';
import type { Net } from '../net';
import { pointSigmas } from '../pointSigma';
import type { Tagged } from '../tagged';

/** What was said of the runs, and the counts that evidence hangs on. */
export function* runGuesses({ site, derived, runs, marks, counters, start }: Net): Generator<Tagged> {
  const sigmaOfPoint = pointSigmas(site, derived.points);
  for (const { run, scale, zero, entryLeg } of runs.values()) {
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
    const entry = derived.features.get(run.entry ?? '')?.feature;
    // a pipe that is tied to its entry starts there wherever that is
    const tied = derived.paths.get(run.path ?? '')?.tiedTo.includes(run.entry) ?? false;
    const entrySigma =
      tied || entry === undefined ? 0 : sigmaOfPoint({ of: entry.id, at: entry.vertices[0]?.id ?? '' });
    const pointSigma = run.zero.at === 'point' ? sigmaOf(site, 'sameThing') : 0;
    yield {
      tag: { is: 'zero', run: run.id },
      observation: {
        kind: 'coordinate',
        id: `zero/${run.id}`,
        unknown: zero,
        value: run.zero.counter,
        sigma: Math.hypot(sigmaOf(site, 'zero'), entrySigma, pointSigma) / said,
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
