/**
 * Below this distance in metres two plan points are one: a tenth of a millimetre is far under what a tape
 * reads and far over rounding within a thousand kilometres of the origin.
 */
export const COINCIDENT_M = 1e-4;

/**
 * Lengths in metres at or below this are rounding: no path element is made for them and no drop is entered.
 */
export const NEGLIGIBLE_LENGTH_M = 1e-9;

/**
 * A turn of at least this many radians (172°) is a path folded back on itself, not a bend: its tangents would
 * eat the legs (tan of the half angle is above 14), so the corner stays sharp.
 */
export const FOLD_RAD = 3;

/**
 * Greatest error in metres of the depth of a line inside a ring (see `polylineToRing`), whose exact value
 * lies where two edges are equally far.
 */
export const DEPTH_M = 1e-6;

/**
 * Chords that stand for one arc at the most: half a degree each round a full circle. More are only asked for where
 * the radius is some hundred metres and more, and are not seen in a yard.
 */
export const MOST_CHORDS = 720;

/** Metres: lengths on a plat are rounded to a hundredth of a foot; two of them and a radius leave together about this. */
export const PLAT_LENGTH_M = 0.01;

/** Radians (half a minute): old plats round the central angle of a curve to the minute. */
export const PLAT_ANGLE_RAD = Math.PI / 180 / 60 / 2;

/**
 * Gaps and slivers of regions thinner than this, in metres, are rounding: what lies on either side of such a gap is one piece. Far over
 * the rounding of corners that were computed in different ways, far under what anyone could dig.
 */
export const SLIVER_M = 1e-7;

/**
 * Outer corners of a strip run out to a point up to this many times the half width from the line's own corner, which is a turn of
 * 120°; sharper ones are cut off square to the bisector, at the half width.
 */
export const MITRE_LIMIT = 2;
