import type { Run } from '../document/run';
import type { Site } from '../document/site';
import { sigmaOf } from '../rules/sigmaOf';
import type { Mark } from './marks';

/** What a run's counter is measured with. */
type Sigmas = Pick<Site, 'sigmas' | 'tape'>;

/** Of one look at the counter (m of its count): the look itself, and the step of its display, which is off by up to half of it. */
export function counterSigma(site: Sigmas, resolution: number): number {
  return Math.hypot(sigmaOf(site, 'counter'), resolution / Math.sqrt(12));
}

/** Of a run's scale (true per counted length): a length that was counted from one look to another and taped, or what nobody checked. */
export function scaleSigma(site: Sigmas, { scale, resolution }: Run): number {
  if (scale.by === 'said') return sigmaOf(site, 'scale') * scale.factor;
  const factor = scale.actual / scale.counted;
  return Math.hypot(Math.SQRT2 * counterSigma(site, resolution) * factor, site.tape.sigma) / scale.counted;
}

/** Of how far along the pipe a reading is (m of cable): count, zero, scale over the cable, and the riser where there is one. */
export function alongSigma(site: Sigmas, { run, trace }: Mark): number {
  return Math.hypot(
    trace.scale * counterSigma(site, run.resolution),
    sigmaOf(site, 'zero'),
    run.zero.at === 'point' ? sigmaOf(site, 'sameThing') : 0,
    run.zero.at === 'rim' ? sigmaOf(site, 'riser') : 0,
    scaleSigma(site, run) * (trace.counted - trace.zero),
  );
}

/** Of how far apart along the pipe (m of cable) two runs come out with one thing. */
export function apartSigma(site: Sigmas, a: Mark, b: Mark): number {
  return Math.hypot(alongSigma(site, a), alongSigma(site, b), sigmaOf(site, 'sameThing'));
}
