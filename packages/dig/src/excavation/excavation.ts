import type { Point, Region } from '@footmark/geometry';
import type { Dig, Protection, RuleName, Soil } from '@footmark/site';
import type { Cut, CutSides } from './cut';
import type { ExcavationFinding } from './excavationFinding';

/** How deep a dig is below the ground (m): at its least and most, and how sure that is. `said`: by the dig itself. */
export type DigDepth = {
  readonly least: number;
  readonly most: number;
  readonly sigma: number;
  readonly from: 'said' | 'pipe';
};

/**
 * How the sides are kept. `as`: the soil that is computed with; `row` the rule of the slope. Behind a shield they stand straight, all the way
 * up (`slope` 0) or, where its height is told, as far below its top as is asked.
 */
export type Sides = CutSides & {
  readonly protection: Protection;
  readonly chosen: Soil;
  readonly as: Soil;
  readonly row: RuleName | null;
};

export type SpoilSide = 'left' | 'right';

/** A heap beside a dig: a strip as long as the dig, set back from its edge. */
export type SpoilHeap = {
  readonly outline: Region;
  /** Features that leave no room for it, in the order of the site. */
  readonly blocked: readonly string[];
};

/** What is dug out, loose. Metres and m³. */
export type Spoil = {
  readonly volume: number;
  readonly width: number;
  readonly height: number;
  readonly setback: number;
  readonly left: SpoilHeap;
  readonly right: SpoilHeap;
  /** Where there is room; `away`: on neither side. */
  readonly suggested: SpoilSide | 'away';
  /** Where it is put: as the dig says, else as suggested. */
  readonly side: SpoilSide | 'away';
};

/** A ladder or ramp at a station of the dig's line (m). */
export type EgressPlace = { readonly station: number; readonly at: Point };

/** What the top outline takes of the surface, m². Pavement that lies over other pavement counts once in `paved`. */
export type Restore = {
  readonly pavements: readonly { readonly feature: string; readonly area: number }[];
  readonly paved: number;
  /** The rest on the lot; where no boundary is drawn, all the rest. */
  readonly lawn: number;
  /** The rest beyond the boundary. */
  readonly beyond: number;
};

/** A planned dig and all that follows from it. What is null is not known, and a finding says why. */
export type Excavation = {
  readonly dig: Dig;
  /** The pipe that it follows or that its mark is on. */
  readonly path: string | null;
  /** The middle line of its bottom with the flow. */
  readonly line: readonly { readonly at: Point; readonly station: number }[];
  readonly depth: DigDepth | null;
  readonly sides: Sides;
  readonly bottom: { readonly length: number; readonly width: number; readonly outline: Region } | null;
  /** Its pieces whose depth is known: of a dig whose depth is known all along the one, of one without a place none. */
  readonly cuts: readonly Cut[];
  /** `width`: the greatest across; `length`: along its middle, from end to end. */
  readonly top: {
    readonly width: number;
    readonly length: number;
    readonly outline: Region;
    readonly area: number;
  } | null;
  /**
   * The ground that it takes: its top; `atLeast` where its depth is not known all along: its bottom, and the top of what is known of it.
   * Null without a place.
   */
  readonly ground: { readonly outline: Region; readonly atLeast: boolean } | null;
  /** In the ground, m³. */
  readonly volume: number | null;
  readonly spoil: Spoil | null;
  readonly egress: readonly EgressPlace[];
  readonly restore: Restore | null;
  readonly findings: readonly ExcavationFinding[];
};
