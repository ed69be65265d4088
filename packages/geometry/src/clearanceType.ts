import type { Point } from './point';

/**
 * Distance from a first thing to a second, metres: negative by how deep the first is inside the second, 0 on
 * its edge. `from` is the place on the first, `at` on the edge of the second; they lie |distance| apart. Half
 * widths (a pipe's outside radius) are the caller's to subtract.
 */
export type Clearance = Readonly<{ distance: number; from: Point; at: Point }>;
