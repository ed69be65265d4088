import type { ObservationKind, PipeMaterial } from '@footmark/site';

/** What the app's language says of things. A word that is absent or empty is left out of its label. */
export type DrawingWords = Readonly<{
  observation?: (kind: ObservationKind) => string;
  material?: (material: PipeMaterial) => string;
}>;

export type DrawOptions = Readonly<{
  words?: DrawingWords;
  /** What to bring out. `mark`: its ties are drawn, and it is ringed. */
  highlight?: Readonly<{ mark?: Readonly<{ run: string; id: string }> }>;
  /** Whether lengths and bearings are written along walls, boundaries and the pipe. Default true. */
  dimensions?: boolean;
}>;
