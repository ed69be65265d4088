/** Metres: so deep within an outline, or so near to it, is on it. Nobody draws or tapes a wall better. */
export const ON_THE_WALL_M = 0.01;

/** Metres: a line that comes nearer than it may by no more than this touches. */
export const TOUCH_M = 1e-6;

/** Metres: a place this far aside of a line lies on it. */
export const ON_LINE_M = 1e-7;

/** Metres: lengths that differ by less are one. */
export const SAME_LENGTH_M = 1e-9;
