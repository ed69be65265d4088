/** A count or an amount without a unit, as every language here writes it: `1,000`, `−2.5`. */
export function countText(amount: number): string {
  return amount.toLocaleString('en-US').replace('-', '−');
}
