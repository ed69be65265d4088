import type { Point } from '@footmark/geometry';
import type { Path, RuleName } from '@footmark/site';
import type { DigFinding, DigSeverity } from '../digFinding';

type OnPath = { path: string; state: Path['state'] };

/** Values by code: things by their ids, lengths and stations in metres, turns in radians. */
export type DrainFindingValues = {
  /** By levels; `short` (m): how much deeper the lower place would have to be, or higher the upper. */
  'fall-too-little': OnPath & Sloped & { least: number; short: number };
  'fall-against-flow': OnPath & Sloped & { least: number; short: number };
  /** The levels leave it open; `others`: so many more pieces of the path of which they do; `whole`: from end to end they tell that it is enough. */
  'fall-not-sure': OnPath & Sloped & { least: number; others: number; whole: boolean };
  /** A planned slope where no levels tell. */
  'fall-said-too-little': OnPath & { from: number; to: number; slope: number; least: number; short: number };
  /** As is asked here, and less than some other codes ask: the first such piece. */
  'fall-less-than-elsewhere': OnPath & { from: number; to: number; slope: number; elsewhere: number };
  /** Fewer than two levels of a planned pipe; `required` (m): what it has to fall over its `length`. */
  'fall-not-known': OnPath & { length: number; required: number };
  /** The invert at the end against the tap's: by how much it lies lower (m). `sure`: the range of both leaves that so. */
  'end-below-tap': OnPath & { tap: string; by: number; sigma: number; sure: boolean };
  /** `sure`: all of the range that the levels leave open lies below what is asked. */
  'cover-too-thin': OnPath & { cover: number; asked: number; station: number; sure: boolean };
  'cover-above-frost': OnPath & { cover: number; asked: number; station: number; sure: boolean };
  /** Nowhere, or only in part: `length` (m) out of doors of which it is not known. */
  'cover-not-known': OnPath & { because: 'no-pipe-level' | 'no-ground'; length: number; whole: boolean };
  'cleanout-at-head': OnPath & { station: number };
  /** Where the pipe has left the building; `limit`: how far from there an opening or a stack may be. */
  'cleanout-at-junction': OnPath & { station: number; limit: number };
  'manhole-along': OnPath & { station: number; spacing: number };
  'cleanout-too-small': OnPath & { feature: string; station: number; diameter: number; asked: number };
  'cleanout-at-turn': OnPath & { station: number; turn: number; limit: number };
  'cleanout-after-turns': OnPath & { station: number; turn: number; limit: number };
  'cleanout-along': OnPath & { station: number; spacing: number };
  'turn-needs-sweep': OnPath & { station: number; turn: number; limit: number };
  /** `shelf`: and on a solid shelf; `sleeve` (m): or, where it crosses, sleeved so far to each side; `passBelow`
   * (m): where it crosses below, by so much some codes let it. */
  'water-too-near': OnPath &
    WaterValues & { above: number; shelf: boolean; sleeve: number | null; passBelow: number | null };
  /** Nearer in plan than is asked; what is not known of what would decide. */
  'water-depth-not-known': OnPath & WaterValues & { missing: readonly WaterUnknown[] };
  /** Nearer than is asked of others, and allowed: as it lies so far `above`, or by what the sewer is made of. */
  'water-allowed': OnPath &
    WaterValues & { by: 'height' | 'material'; above: number | null; sure: boolean; elsewhere: number };
  /** As far as is asked here, and nearer than some other codes ask (m). */
  'water-nearer-than-elsewhere': OnPath & WaterValues & { elsewhere: number };
};

/** Between two stations; the slope as fall over run, with its standard deviation. */
type Sloped = { from: number; to: number; slope: number; sigma: number };

type WaterValues = {
  service: string;
  /** Edge to edge in plan, and what is asked. */
  distance: number;
  asked: number;
  /** How far the water's bottom is asked to lie over the sewer's top, nearer than that. */
  aboveAsked: number;
  crosses: boolean;
  main: boolean;
};

/** What has to be known to tell whether water may lie so near to a sewer. */
export type WaterUnknown = 'service-depth' | 'service-diameter' | 'pipe-level' | 'pipe-material' | 'ground';

export type DrainFinding = {
  [Code in keyof DrainFindingValues]: DigFinding<Code, DrainFindingValues[Code]>;
}[keyof DrainFindingValues];

/** Adds what is to be said of a path. */
export type SayOfDrain = <Code extends keyof DrainFindingValues>(
  code: Code,
  severity: DigSeverity,
  values: Omit<DrainFindingValues[Code], keyof OnPath>,
  where: { readonly place: Point | null; readonly rule: RuleName | null },
) => void;

/** The rule behind each, where it does not depend on the place. */
export const ruleBehind = {
  'cover-too-thin': 'leastCover',
  'cover-above-frost': 'frostDepth',
  'cleanout-at-head': 'cleanoutStack',
  'cleanout-at-junction': 'cleanoutJunction',
  'manhole-along': 'manholeSpacing',
  'cleanout-too-small': 'cleanoutSize',
  'cleanout-at-turn': 'cleanoutTurn',
  'cleanout-after-turns': 'cleanoutTurnSum',
  'cleanout-along': 'cleanoutSpacing',
  'turn-needs-sweep': 'fittingTurn',
} as const satisfies Partial<Record<keyof DrainFindingValues, RuleName>>;
