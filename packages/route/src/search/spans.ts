/** Part of a ray: metres from its start. */
export type Span = readonly [from: number, to: number];

/** Spans in order, those that touch made one. */
export function merged(spans: readonly Span[]): readonly Span[] {
  if (spans.length < 2) return spans;
  const found: [number, number][] = [];
  for (const [from, to] of spans.toSorted((a, b) => a[0] - b[0])) {
    const last = found.at(-1);
    if (last !== undefined && from <= last[1]) last[1] = Math.max(last[1], to);
    else found.push([from, to]);
  }
  return found;
}

/** Metres of the spans between 0 and `to`. */
export function lengthUpTo(spans: readonly Span[], to: number): number {
  let sum = 0;
  for (const [a, b] of spans) sum += Math.max(0, Math.min(b, to) - Math.max(0, a));
  return sum;
}

/** Spans but for what others take of them. */
export function without(spans: readonly Span[], taken: readonly Span[]): readonly Span[] {
  return taken.reduce<readonly Span[]>(
    (left, [c, d]) =>
      left.flatMap(([a, b]): Span[] => {
        const before: Span[] = Math.min(b, c) > a ? [[a, Math.min(b, c)]] : [];
        const after: Span[] = b > Math.max(a, d) ? [[Math.max(a, d), b]] : [];
        return [...before, ...after];
      }),
    spans,
  );
}
