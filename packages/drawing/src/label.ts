import type { Point } from '@footmark/geometry';
import type { Target } from '@footmark/site';
import type { Ink } from './primitive';

/**
 * Where a label would like to be. `around`: beside its anchor; `centre`: over it, or else beside it; `along`: beside the line that
 * its anchor lies on, in the line's direction; `on-line`: on that line, which is to be covered by paper below the text.
 */
export type LabelSeat = 'around' | 'centre' | 'along' | 'on-line';

/** A text that wants a place. `placeLabels` finds it one. */
export type Label = Readonly<{
  /** Unique in the drawing and steady from one drawing to the next. */
  id: string;
  text: string;
  /** A shorter text for where the full one finds no place beside its anchor. */
  brief?: string;
  /** Labels of one group whose anchors are nearer than `apartMm` (paper) to each other take their brief text at once. */
  crowd?: Readonly<{ group: string; apartMm: number }>;
  /** The anchor, metres. */
  at: Point;
  /** Of its capitals, paper mm: a font's size is this divided by its capitals' share of the em (about 0.7). */
  height: number;
  ink: Ink;
  weight: 'regular' | 'bold';
  /** Larger is placed first. */
  priority: number;
  seat: LabelSeat;
  /**
   * For `along` and `on-line`: the line's azimuth (rad), the length (m) about the anchor that the text may use, and the
   * side of that direction to try first (where not given: above). `fromEndMm`: on a line that is long on paper, the text
   * stays about this far from the end that the azimuth points to, so that both are seen together.
   */
  along?: Readonly<{ azimuth: number; span: number; side?: 'left' | 'right'; fromEndMm?: number }>;
  /** Other places (metres) for the middle of the text, best first: in the area that `centre` stands for, in a crown. */
  elsewhere?: readonly Point[];
  /** Radius about the anchor to keep off, paper mm. */
  clear: number;
  /**
   * When no place near the anchor is free: further away with a leader; not drawn at this scale; or with a leader and, if there is
   * no place for that either, over a symbol.
   */
  whenCrowded: 'leader' | 'leave-out' | 'always';
  /** Texts of one group say the same thing again: one that is nearer than `apartMm` (paper) to another is left out. */
  repeat?: Readonly<{ group: string; apartMm: number }>;
  target?: Target;
}>;
