/**
 * The order of a merged list of names: mine, unless only theirs was changed; what has no place in it yet comes after the name that it
 * follows in the other order. `kept` are the names that the merged list has.
 */
export function mergeOrder(
  base: readonly string[] | null,
  mine: readonly string[],
  theirs: readonly string[],
  kept: ReadonlySet<string>,
): readonly string[] {
  const moved = (side: readonly string[]) => base !== null && !sameOrder(base, side);
  const [first, second] = moved(theirs) && !moved(mine) ? [theirs, mine] : [mine, theirs];
  const order = first.filter((name) => kept.has(name));
  const placed = new Set(order);
  let after: string | null = null;
  for (const name of second) {
    if (!kept.has(name)) continue;
    if (!placed.has(name)) {
      order.splice(after === null ? 0 : order.indexOf(after) + 1, 0, name);
      placed.add(name);
    }
    after = name;
  }
  return order;
}

/** Whether the names that two orders share stand in one order. */
function sameOrder(a: readonly string[], b: readonly string[]): boolean {
  const [inA, inB] = [new Set(a), new Set(b)];
  const shared = b.filter((name) => inA.has(name));
  return a.filter((name) => inB.has(name)).every((name, i) => name === shared[i]);
}
