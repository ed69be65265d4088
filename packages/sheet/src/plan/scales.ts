import type { Units } from '@footmark/site';

const INCHES_TO_A_FOOT = 12;

/**
 * Feet to the inch on an engineer's scale, and its multiples as plot plans have them: 10 to 60, 100, 200 and so on (a naval facilities
 * guide for architects and engineers, 7.8.5; engineer's scale practice). 5 is read off the scale's 50 (common practice, no source).
 */
const FEET_TO_AN_INCH = [5, 10, 20, 30, 40, 50, 60, 100, 200, 300, 400, 500, 600, 1000, 2000];

/** Ratios on a metric scale rule and their multiples (ISO 5455's 1, 2 and 5, and 1:250 as site plans have it; from memory). */
const METRIC = [20, 50, 100, 200, 250, 500, 1000, 2000, 2500, 5000, 10_000, 20_000];

/** Denominators that a scale rule has, the largest drawing first. */
export function ruledScales({ length }: Units): readonly number[] {
  return length === 'm' ? METRIC : FEET_TO_AN_INCH.map((feet) => feet * INCHES_TO_A_FOOT);
}

/** Feet to an inch where that is a whole number, else null. */
export function feetToAnInch(denominator: number): number | null {
  const feet = denominator / INCHES_TO_A_FOOT;
  return Math.abs(feet - Math.round(feet)) < 1e-9 ? Math.round(feet) : null;
}

export function mmPerMetreOf(denominator: number): number {
  return 1000 / denominator;
}
