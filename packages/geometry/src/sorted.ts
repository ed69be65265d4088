/**
 * The value at `index`. Throws a RangeError outside the array, so that a wrong index cannot pass as a number.
 */
export function valueAt(values: Float64Array, index: number): number {
  const value = values[index];
  if (value === undefined) throw new RangeError(`no value at index ${index} of ${values.length}`);
  return value;
}

/**
 * Index of the last of the first `count` ascending values that is not above `value`, by bisection; 0 when all
 * are above it or `value` is NaN.
 */
export function lastAtOrBelow(ascending: Float64Array, count: number, value: number): number {
  let low = 0;
  let high = count;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (valueAt(ascending, middle) <= value) low = middle;
    else high = middle;
  }
  return low;
}
