import type { FeatureOf } from '../document/feature';
import type { Site } from '../document/site';
import { sigmaOf } from '../rules/sigmaOf';

/**
 * Standard deviation (m, each axis) of where a locate says the sonde is: as typed, else by its method and depth. `placed` is that of the
 * point itself, how it was taped or put down.
 */
export function locateSigma(site: Site, locate: FeatureOf<'locate'>, placed: number): number {
  return Math.hypot(locate.fields.sigma ?? methodSigma(site, locate), placed);
}

function methodSigma(site: Site, { fields }: FeatureOf<'locate'>): number {
  const depth = fields.depth ?? 0;
  switch (fields.method ?? 'peak') {
    case 'exposed':
      return sigmaOf(site, 'exposed');
    case 'crossed':
      return Math.max(sigmaOf(site, 'locateCrossed'), sigmaOf(site, 'locateCrossedShare') * depth);
    case 'peak':
      return Math.max(sigmaOf(site, 'locatePeak'), sigmaOf(site, 'locatePeakShare') * depth);
    case 'rough':
      return sigmaOf(site, 'locateRough');
  }
}
