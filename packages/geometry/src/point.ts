/** A place or a displacement in the plane: metres, x east-ish, y north-ish, right-handed. */
export type Point = Readonly<{ x: number; y: number }>;
