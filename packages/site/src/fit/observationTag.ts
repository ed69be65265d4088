/**
 * What an observation of the fit is, and what it is about. `guess`: how the lines were drawn and what was said of the runs, which
 * the fit starts from; `evidence`: what was found out besides.
 */
export type ObservationTag =
  /** A coordinate of a pipe's point as it was drawn or measured; along and across a line that it was said to lie on. */
  | {
      readonly is: 'point';
      readonly path: string;
      readonly vertex: string;
      readonly axis: 'x' | 'y' | 'along' | 'across';
    }
  /** Length of the leg that ends at a pipe's point and was told from the point before; its direction, or its turn from the leg before. */
  | {
      readonly is: 'leg';
      readonly path: string;
      readonly vertex: string;
      readonly part: 'length' | 'direction' | 'turn';
    }
  /** How far the pipe strays from the straight line on a piece of the leg that ends at a vertex. */
  | { readonly is: 'stray'; readonly path: string; readonly vertex: string; readonly piece: number }
  | { readonly is: 'scale' | 'zero' | 'riser'; readonly run: string }
  | { readonly is: 'counter'; readonly run: string; readonly reading: string }
  | { readonly is: 'locate'; readonly feature: string; readonly part: 'along' | 'across' }
  | { readonly is: 'pair'; readonly pair: string }
  | { readonly is: 'seen'; readonly run: string; readonly reading: string }
  | { readonly is: 'length'; readonly path: string; readonly length: string }
  | { readonly is: 'bend'; readonly path: string; readonly vertex: string };

export type ObservationIs = ObservationTag['is'];

/** From what a search zone's size comes. */
export const zoneSources = ['counter', 'zero', 'scale', 'riser', 'path', 'locate', 'pair', 'known'] as const;
export type ZoneSource = (typeof zoneSources)[number];

const SOURCE_OF: Record<ObservationIs, ZoneSource> = {
  point: 'path',
  leg: 'path',
  stray: 'path',
  scale: 'scale',
  zero: 'zero',
  riser: 'riser',
  counter: 'counter',
  locate: 'locate',
  pair: 'pair',
  seen: 'known',
  length: 'known',
  bend: 'known',
};

export function sourceOf(tag: ObservationTag): ZoneSource {
  return SOURCE_OF[tag.is];
}

/** Whether an observation says more than the drawing and the counter: only such can be contradicted. */
export function isEvidence(tag: ObservationTag): boolean {
  return (
    tag.is === 'locate' || tag.is === 'pair' || tag.is === 'seen' || tag.is === 'length' || tag.is === 'bend'
  );
}

/** One text for what an observation is about, without the part of it: people set aside a whole locate, not its half. */
export function observationName(tag: ObservationTag): string {
  switch (tag.is) {
    case 'point':
    case 'leg':
    case 'bend':
      return `${tag.is}/${tag.path}/${tag.vertex}`;
    case 'stray':
      return `stray/${tag.path}/${tag.vertex}`;
    case 'scale':
    case 'zero':
    case 'riser':
      return `${tag.is}/${tag.run}`;
    case 'counter':
    case 'seen':
      return `${tag.is}/${tag.run}/${tag.reading}`;
    case 'locate':
      return `locate/${tag.feature}`;
    case 'pair':
      return `pair/${tag.pair}`;
    case 'length':
      return `length/${tag.path}/${tag.length}`;
  }
}
