import type { Units } from '@footmark/site';
import { sureText } from './sureText';

type Lengths = Pick<Units, 'length'>;

/** How much (m) lower one end of a pipe is than the other, with the flow: `1.6 ft`; one that climbs `sube 1.6 ft`. */
export function dropText(metres: number, units: Lengths): string {
  return metres < 0 ? `sube ${sureText(metres, units)}` : sureText(metres, units);
}

/** How far (m) below the ground something is: `2.0 ft`; what comes out of it is `0.5 ft sobre el terreno`. */
export function belowGroundText(metres: number, units: Lengths): string {
  return metres < 0 ? `${sureText(metres, units)} sobre el terreno` : sureText(metres, units);
}
