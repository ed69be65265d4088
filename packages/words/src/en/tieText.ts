import type { Site, Tie, Ties } from '@footmark/site';
import { lengthText } from '../measureText';
import { referenceInText } from './thingName';

/** `23′ 6½″ from House corner B`. */
export function tieText(tie: Tie, site: Site): string {
  return `${lengthText(tie.distance, site.units)} from ${referenceInText(tie.from, site)}`;
}

/** `on the left, looking from House corner A to Maple`. */
export function sideText({ pair: [a, b], side }: Ties, site: Site): string {
  return `on the ${side}, looking from ${referenceInText(a.from, site)} to ${referenceInText(b.from, site)}`;
}
