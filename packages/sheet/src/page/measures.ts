/** A printer's point, mm. */
const POINT_MM = 25.4 / 72;

/** Em of the font to the height of its capitals: Barlow's are 0.7 of the em. */
export const EM_PER_CAPITAL = 1 / 0.7;

/** From the edge of the paper to the frame, mm: within what office printers reach. */
export const MARGIN_MM = 10;

/** The one scale of gaps, mm. */
export const GAP = { hair: 0.75, small: 1.5, medium: 3, large: 6, wide: 9 } as const;

/** The one scale of lettering, mm of em: from what is looked up to what is read at arm's length. */
export const SIZE = {
  fine: 7 * POINT_MM,
  small: 8 * POINT_MM,
  body: 9.5 * POINT_MM,
  strong: 12 * POINT_MM,
  heading: 11 * POINT_MM,
  title: 17 * POINT_MM,
} as const;

/** From base line to base line, to the em. */
export const LINE_HEIGHT = 1.18;

/** Pens, mm: each about √2 of the one before. */
export const LINE = { hair: 0.13, thin: 0.18, fine: 0.25, medium: 0.35, frame: 0.5, heavy: 0.7 } as const;
