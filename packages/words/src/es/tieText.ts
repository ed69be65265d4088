import type { Site, Tie, Ties } from '@footmark/site';
import { lengthText } from '../measureText';
import { referenceInText } from './thingName';

/** `23′ 6½″ desde la esquina B de Casa`. */
export function tieText(tie: Tie, site: Site): string {
  return `${lengthText(tie.distance, site.units)} desde ${referenceInText(tie.from, site)}`;
}

const sides: Record<Ties['side'], string> = { left: 'a la izquierda', right: 'a la derecha' };

/** `a la izquierda, mirando desde la esquina A de Casa hacia Arce`. */
export function sideText({ pair: [a, b], side }: Ties, site: Site): string {
  return `${sides[side]}, mirando desde ${referenceInText(a.from, site)} hacia ${referenceInText(b.from, site)}`;
}
