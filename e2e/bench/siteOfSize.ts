import type { Site } from '../../packages/site/src/index';
import { crowdedSite } from './crowdedSite';

const SEED = 2026;

/** A crowded yard that takes at least so many bytes as JSON without spaces, and no more than one thing over. */
export function siteOfSize(bytes: number): Site {
  let [few, many] = [3, 8];
  while (sizeOf(many) < bytes) [few, many] = [many, many * 2];
  while (many - few > 1) {
    const middle = Math.floor((few + many) / 2);
    if (sizeOf(middle) < bytes) few = middle;
    else many = middle;
  }
  return crowdedSite(many, SEED);
}

function sizeOf(features: number): number {
  return Buffer.byteLength(JSON.stringify(crowdedSite(features, SEED)));
}
