import { cableSaved } from './curve';

/**
 * Cable paid out since the zero, metres: `scale · (reading − zero)`. `scale` is true length per counted
 * length (1 unless calibrated); reading and zero in metres as counted. Negative when the reading lies before
 * the zero.
 */
export function cableFromCounter({
  reading,
  zero,
  scale,
}: Readonly<{ reading: number; zero: number; scale: number }>): number {
  return scale * (reading - zero);
}

/**
 * Cable used between the top of a riser and the pipe, metres: the riser's drop less what its sweep saves (2T
 * − L). `riserDrop` is metres from where the counter was zeroed down to the pipe's centre line, `sweepRadius`
 * metres, `sweepAngle` radians (π/2 for a riser that turns into a level pipe). Less this leg, cable beyond
 * the sweep is length along the pipe from the corner under the riser. Comes out negative when the sweep
 * cannot fit in the drop.
 */
export function entryLeg({
  riserDrop,
  sweepRadius,
  sweepAngle,
}: Readonly<{ riserDrop: number; sweepRadius: number; sweepAngle: number }>): number {
  return riserDrop - cableSaved(sweepRadius, sweepAngle);
}
