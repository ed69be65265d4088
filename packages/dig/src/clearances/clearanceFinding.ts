import type { FeatureKind, Path } from '@footmark/site';
import type { DigFinding } from '../digFinding';

type Near = { feature: string; kind: FeatureKind; distance: number; required: number };

/** Values by code: things by their ids, distances in metres between outsides, negative where they overlap. */
export type ClearanceFindingValues = {
  /** `toCentre`: the thing's size is not given, and the distance is to its middle. */
  'pipe-too-near': Near & { path: string; state: Path['state']; station: number; toCentre: boolean };
  /** As far as is asked here, and nearer than some other codes ask (m). */
  'service-nearer-than-elsewhere': Near & {
    path: string;
    state: Path['state'];
    station: number;
    elsewhere: number;
  };
  /** What is dug at a mark is dug by hand. */
  'mark-in-tolerance-zone': Near & { run: string; reading: string };
  /** A pipe beside a wall, and as near to it as may weaken it; from and to along the pipe. */
  'pipe-along-wall': Near & { path: string; state: Path['state']; from: number; to: number };
  /** An outline that crosses itself: what is inside it is told by the even-odd rule, and may not be what is meant. */
  'outline-doubtful': { feature: string; kind: FeatureKind };
};

export type ClearanceFinding = {
  [Code in keyof ClearanceFindingValues]: DigFinding<Code, ClearanceFindingValues[Code]>;
}[keyof ClearanceFindingValues];
