import { countText } from './countText';

/** A share of a length as surveyors say it, such as `1:4,000`, to two figures. */
export function ratioText(ratio: number): string {
  return `1:${countText(Number(ratio.toPrecision(2)))}`;
}
