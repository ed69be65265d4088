import { siteShape2 } from './siteShape2';
import { siteShape3 } from './siteShape3';

/** By version the shape that its links are coded by. Sites of version 1 never went into links. */
export const siteShapes: Readonly<Record<number, string>> = { 2: siteShape2, 3: siteShape3 };
