/** Plain data, an object whose fields may be looked at. */
export type Fields = Readonly<Record<string, unknown>>;

export function isFields(value: unknown): value is Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Whether two plain values are the same data; the order of an object's fields does not count, and a field that is undefined is none. */
export function sameValue(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (Array.isArray(a) && Array.isArray(b)) {
    return a.length === b.length && a.every((item, i) => sameValue(item, b[i]));
  }
  if (!isFields(a) || !isFields(b)) return false;
  const names = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...names].every((name) => sameValue(a[name], b[name]));
}

/** A value as text, the same for the same data whatever the order of its fields. */
export function canonicalText(value: unknown): string {
  return JSON.stringify(value, (_, inner: unknown) =>
    isFields(inner) ? Object.fromEntries(Object.entries(inner).sort(([a], [b]) => inOrder(a, b))) : inner,
  );
}

/** Of two texts the one that is less first. */
export function inOrder(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** The text of a thing, made once for each: sorting asks again and again. */
export function textsOnce<Of>(make: (of: Of) => string): (of: Of) => string {
  const made = new Map<Of, string>();
  return (of) => {
    const known = made.get(of) ?? make(of);
    made.set(of, known);
    return known;
  };
}
