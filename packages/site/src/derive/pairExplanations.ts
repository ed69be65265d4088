import { developedAt } from '@footmark/geometry';
import type { DerivedPath } from './derivePaths';
import type { Mark } from './marks';

/**
 * One thing that alone would make two runs agree: what it would have to be, and by how much that is more than it was said or drawn to
 * be. `zero`: the counter (m) at the run's zero; `riser`: cable (m) between its zero and the pipe; `scale`: true per counted length;
 * `pipe`: cable (m) through the pipe from the one entry to the other.
 */
export type PairExplanation =
  | {
      readonly is: 'zero' | 'riser' | 'scale';
      readonly run: string;
      readonly wouldBe: number;
      readonly by: number;
    }
  | { readonly is: 'pipe'; readonly wouldBe: number; readonly by: number };

/** Each explanation that makes sense, those of the first run first. Both marks have a place on the path. */
export function pairExplanations(a: Mark, b: Mark, on: DerivedPath): readonly PairExplanation[] {
  const [cableA, cableB] = [a, b].map((m) => developedAt(on.profile, m.place?.station ?? 0, 'after')) as [
    number,
    number,
  ];
  const further = cableB - cableA;
  const opposite = a.run.direction !== b.run.direction;
  const lacking = a.run.direction === 'with-flow' ? further : -further;
  return [
    ...ofRun(a, lacking),
    ...ofRun(b, b.run.direction === 'with-flow' ? -further : further),
    // what both counted together is the way from entry to entry
    ...(opposite ? [{ is: 'pipe', wouldBe: a.trace.along + b.trace.along, by: -lacking } as const] : []),
  ];
}

/** What in one run would put its mark `lacking` metres of cable further in. */
function* ofRun({ run, trace }: Mark, lacking: number): Generator<PairExplanation> {
  const { zero, scale, entryLeg, cable } = trace;
  yield { is: 'zero', run: run.id, wouldBe: zero - lacking / scale, by: -lacking / scale };
  // a zero at a point of the plan has no riser before it
  if (run.zero.at !== 'point' && entryLeg - lacking > 0 && lacking !== 0) {
    yield { is: 'riser', run: run.id, wouldBe: entryLeg - lacking, by: -lacking };
  }
  const wouldBe = (scale * (cable + lacking)) / cable;
  if (cable !== 0 && wouldBe > 0) {
    yield { is: 'scale', run: run.id, wouldBe, by: wouldBe - scale };
  }
}
