/** A place on a page: millimetres from its left edge and from its top edge. */
export type PaperPoint = Readonly<{ x: number; y: number }>;

/** A box on a page, mm, from its upper left corner. */
export type Box = Readonly<{ x: number; y: number; width: number; height: number }>;

/** The two cuts that a sheet is lettered in. */
export type Weight = 'regular' | 'bold';

/** `colour` as `#rrggbb`, `width` and `dash` (dash, gap, …; even count) in mm, `opacity` in (0, 1]; without it, opaque. */
export type Pen = Readonly<{
  colour: string;
  width: number;
  dash?: readonly number[];
  opacity?: number;
}>;

export type Tint = Readonly<{ colour: string; opacity?: number }>;

/** Straight lines of one pen, or areas by the even-odd rule. One item of many lines is one path of a renderer. */
export type LinesItem = Readonly<{
  is: 'lines';
  lines: readonly (readonly PaperPoint[])[];
  closed: boolean;
  pen?: Pen;
  tint?: Tint;
}>;

export type CircleItem = Readonly<{
  is: 'circle';
  centre: PaperPoint;
  radius: number;
  pen?: Pen;
  tint?: Tint;
}>;

/**
 * A line of text. `at`: where its anchor stands on the base line; `size`: the em of the font, mm; `turn`: clockwise about `at` (rad). The
 * text holds only what the font has.
 */
export type TextItem = Readonly<{
  is: 'text';
  at: PaperPoint;
  text: string;
  size: number;
  weight: Weight;
  colour: string;
  anchor: 'start' | 'middle' | 'end';
  turn: number;
}>;

/** A picture by its key in the sheet's pictures. */
export type ImageItem = Readonly<{ is: 'image'; picture: string; box: Box }>;

/** Items of which only what lies in the box is to be seen. */
export type WindowItem = Readonly<{ is: 'window'; box: Box; items: readonly Item[] }>;

/** What a page is made of, in painting order. */
export type Item = LinesItem | CircleItem | TextItem | ImageItem | WindowItem;

/** One side of paper, mm. */
export type Page = Readonly<{ width: number; height: number; items: readonly Item[] }>;

/** Bytes of a JPEG or PNG file, with its size in pixels. */
export type Picture = Readonly<{
  bytes: Uint8Array;
  width: number;
  height: number;
  mediaType: 'image/jpeg' | 'image/png';
}>;

/** A sheet ready to be rendered. `date`: an ISO day. */
export type Sheet = Readonly<{
  title: string;
  language: string;
  date: string;
  pages: readonly Page[];
  pictures: ReadonlyMap<string, Picture>;
}>;
