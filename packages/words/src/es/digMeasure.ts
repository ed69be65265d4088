import { areaTextIn, shareTextIn } from '../amountText';
import { lessThan } from './sureText';

/** An area (m²) of what is dug up or taken, and a share of a whole. */
export const areaText = areaTextIn(lessThan);
export const shareText = shareTextIn(lessThan);

/** Before a number that may be more: of a dig whose depth is not known all along. */
export function leastText(atLeast: boolean): string {
  return atLeast ? 'al menos ' : '';
}

/** How a side is cut back: `1.5 horizontal por 1 vertical`. */
export function acrossText(acrossOverDown: number): string {
  return `${Number(acrossOverDown.toFixed(2))} horizontal por 1 vertical`;
}
