/** What the sample yard is known to have. */
export function need<T>(value: T | null | undefined): T {
  if (value == null) throw new Error('the sample yard lost something');
  return value;
}
