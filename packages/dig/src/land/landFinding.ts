import type { Path } from '@footmark/site';
import type { DigFinding } from '../digFinding';
import type { Whose } from './whose';

type Stretch = { path: string; state: Path['state']; from: number; to: number; features: readonly string[] };

/** Values by code: things by their ids, stations and lengths in plan metres. */
export type LandFindingValues = {
  // what is missing or wrong, so that nobody guesses
  'no-boundary': Record<never, never>;
  'boundary-crosses-itself': { feature: string };
  /** `gap`: between its two ends; the measured sides of an outline come back that far off. */
  'boundary-not-closed': { feature: string; gap: number };
  /** None of several closed boundaries, or not the one, is told to be this site's: none holds its building. */
  'lot-not-told': { lots: number };
  /** Without a building or a lot nobody knows which side of the line is public. */
  'right-of-way-without-house': { feature: string };
  // whose land
  'path-on-neighbour': Stretch;
  'path-on-public': Stretch;
  'path-in-easement': Stretch;
  /** Outside the lot, and nothing says whose it is. */
  'path-outside': Stretch;
  'path-along-boundary': Stretch;
  /** Crosses a boundary from which nothing can be told, as it does not close or crosses itself. */
  'path-crosses-open-boundary': { path: string; state: Path['state']; station: number; feature: string };
  'mark-not-private': {
    run: string;
    reading: string;
    whose: Exclude<Whose, 'private' | 'unknown'>;
    features: readonly string[];
  };
};

export type LandFinding = {
  [Code in keyof LandFindingValues]: DigFinding<Code, LandFindingValues[Code]>;
}[keyof LandFindingValues];
