/**
 * A list's order with the names that only another order has: each after the name that it follows there. `kept` are the names that the
 * list has.
 */
export function mergeOrder(
  first: readonly string[],
  other: readonly string[],
  kept: ReadonlySet<string>,
): readonly string[] {
  const order = [...new Set(first)].filter((name) => kept.has(name));
  const placed = new Set(order);
  let after: string | null = null;
  for (const name of other) {
    if (!kept.has(name)) continue;
    if (!placed.has(name)) {
      order.splice(after === null ? 0 : order.indexOf(after) + 1, 0, name);
      placed.add(name);
    }
    after = name;
  }
  return order;
}
