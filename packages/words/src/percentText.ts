/** A share in hundredths, to two figures: `1.2 %`, `0.00034 %`. */
export function percentText(share: number): string {
  return `${(100 * share).toLocaleString('en-US', { maximumSignificantDigits: 2 })} %`;
}
