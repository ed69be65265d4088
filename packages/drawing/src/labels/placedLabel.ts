import type { Point } from '@footmark/geometry';
import type { Label } from '../label';

/** Width (paper mm) of a text at a height (paper mm); the renderer knows its font. */
export type MeasureText = (text: string, heightMm: number, weight: Label['weight']) => number;

/**
 * What labels keep off: a disc never, a stroke if they can. Places in metres, `radiusMm` on paper; `weight`: how many plain
 * lines a stroke counts for, 1 when not given.
 */
export type Obstacle =
  | Readonly<{ kind: 'disc'; at: Point; radiusMm: number }>
  | Readonly<{ kind: 'stroke'; from: Point; to: Point; weight?: number }>;

/** `mmPerMetre`: paper millimetres to one metre of plan (1:100 is 10). */
export type LabelSetting = Readonly<{ mmPerMetre: number; measureText: MeasureText }>;

/** A label with its place: paint `text` centred on `at`, turned by `azimuth`, on one line. */
export type PlacedLabel = Readonly<{
  label: Label;
  /** The label's full text or its brief one. */
  text: string;
  /** Centre of the text's box, metres. */
  at: Point;
  /**
   * Direction in which the text reads: radians clockwise from plan north, π/2 for level text, about 0 for text that reads
   * upwards; never downwards.
   */
  azimuth: number;
  /** The box, paper mm, with the margin that keeps others off. */
  widthMm: number;
  heightMm: number;
  /** From the anchor's symbol to the box, metres, when the text is not beside its anchor. */
  leader?: readonly [Point, Point];
}>;
