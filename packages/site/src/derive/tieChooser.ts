import type { Point } from '@footmark/geometry';
import type { Site } from '../document/site';
import type { Derived } from './derive';
import { tiesAt } from './markTies';
import { referenceIndex } from './references';
import type { Ties } from './ties';

/** Tells of any place on the plan which tapes set it out; null under a building, and where no two references cut. */
export function tieChooser(site: Site, { features, points }: Derived): (place: Point) => Ties | null {
  const around = {
    references: referenceIndex(site, features, points),
    blocks: [...features.values()].filter((f) => f.spec.blocksTape),
    tape: site.tape,
  };
  return (place) => tiesAt(place, around).ties;
}
