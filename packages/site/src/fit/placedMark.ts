import type { Mark, MarkPlace } from '../derive/marks';

/** A mark with a place. */
export type PlacedMark = Mark & { readonly place: MarkPlace };
