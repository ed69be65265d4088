import type { TextBlock } from '../text/textBlock';

/** A part of a sheet that is laid out as a whole or not at all on a page: a row, a paragraph, a strip. */
export type Piece = TextBlock;

/** What stands under one heading. `repeat`: what is painted again on top of each page that it goes on to. */
export type Section = Readonly<{
  heading: string;
  /** Columns that the pieces run down, one after the other. */
  columns: number;
  /** Gap between pieces, mm. */
  gap: number;
  /** Made for a column of that width (mm). */
  make: (width: number) => Readonly<{ repeat?: Piece; pieces: readonly Piece[] }>;
}>;
