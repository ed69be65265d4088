import type { Point } from '@footmark/geometry';
import type { Site } from '../document/site';
import { kindSpec } from '../kinds/featureKinds';
import type { Derived } from './derive';
import { type Surroundings, tiesAt } from './markTies';
import { referenceIndex } from './references';
import type { Ties } from './ties';

/** From what is taped: from all that can be, or from what will still stand in years alone. */
export type TapedFrom = 'all' | 'lasting';

/** What can be taped from on a site, and what stands in a tape's way. */
export function tieSurroundings(
  site: Site,
  { features, points }: Derived,
  from: TapedFrom = 'all',
): Surroundings {
  const taped =
    from === 'all'
      ? features
      : new Map([...features].filter(([, { feature }]) => kindSpec(feature.kind).lasts));
  return {
    references: referenceIndex(site, taped, points),
    blocks: [...features.values()].filter((f) => f.spec.blocksTape),
    tape: site.tape,
  };
}

/** Tells of any place on the plan which tapes set it out; null under a building, and where no two references cut. */
export function tieChooser(site: Site, derived: Derived): (place: Point) => Ties | null {
  const around = tieSurroundings(site, derived);
  return (place) => tiesAt(place, around).ties;
}
