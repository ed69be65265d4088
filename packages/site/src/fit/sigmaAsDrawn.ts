import { errorEllipse } from '@footmark/adjust';
import { sigmaOf } from '../rules/sigmaOf';
import { addMix, chainAt } from './chain';
import type { LegPlace } from './placed';
import { isSolved, type SolvedRuns } from './solveRuns';
import { legOf, strayPerMetre, strayVariance } from './stray';
import { LEAST_SIGMA_M } from './tagged';

/** The file takes no deviation (m) above this. */
const MOST_SIGMA_M = 1000;

/**
 * How sure the drawing alone makes a place on a pipe: standard deviation (m) of its worse axis, of the straight leg and of what a pipe
 * strays from it. `asDrawn`: solved without evidence.
 */
export function sigmaAsDrawn({ net, result }: SolvedRuns): (at: LegPlace) => number {
  return (at) => {
    const [chain, on] = [net.chains.get(at.path), net.derived.paths.get(at.path)];
    if (!isSolved(result) || chain === undefined || on === undefined)
      return sigmaOf(net.site, 'drawnPipePoint');
    const { mix } = chainAt(chain, at.leg + at.share);
    const rows = [
      { x: 1, y: 0 },
      { x: 0, y: 1 },
    ].map((axis) => {
      const row: { unknown: number; derivative: number }[] = [];
      addMix(mix, axis, 1, { add: (unknown, derivative) => void row.push({ unknown, derivative }) });
      return row;
    });
    const [[xx = 0, xy = 0] = [], [, yy = 0] = []] = result.propagate(rows);
    const length = legOf(on, at.leg)?.length ?? 0;
    const stray = strayVariance(net.strays, at, length, strayPerMetre(sigmaOf(net.site, 'pipeStray')));
    const sigma = Math.hypot(errorEllipse({ xx, xy, yy }).semiMajor, Math.sqrt(stray));
    return Math.min(MOST_SIGMA_M, Math.max(LEAST_SIGMA_M, sigma));
  };
}
