/** Plain data, an object whose fields may be looked at. */
export type Fields = Readonly<Record<string, unknown>>;

export function isFields(value: unknown): value is Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
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
