/** Metres: clearances, start and end are met when they are missed by no more than this. No tape tells it on the ground. */
export const PLACE_M = 1e-3;

/** Metres: lengths of legs and falls are computed to far less than this. */
export const LENGTH_M = 1e-6;

/** Radians: headings and turns are computed to far less than this; over 100 m it is a tenth of a millimetre. */
export const ANGLE_RAD = 1e-6;

/** Metres between two places along the line, at the most, where it is measured near an obstacle. */
export const STEP_M = 2e-3;
