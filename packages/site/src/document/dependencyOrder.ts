/**
 * Orders names so that each comes after all that it needs. `circular` holds the names that, followed, lead back to
 * themselves; they are left out of `order`'s promise. Iterative: a chain of any length cannot overflow the stack.
 */
export function dependencyOrder(needs: ReadonlyMap<string, readonly string[]>): {
  readonly order: readonly string[];
  readonly circular: readonly string[];
} {
  const settled = new Set<string>();
  const open = new Set<string>();
  const order: string[] = [];
  const circular: string[] = [];
  for (const start of needs.keys()) {
    if (settled.has(start)) continue;
    const stack: { key: string; next: number }[] = [{ key: start, next: 0 }];
    open.add(start);
    for (let top = stack.at(-1); top !== undefined; top = stack.at(-1)) {
      const child = (needs.get(top.key) ?? [])[top.next];
      top.next += 1;
      if (child === undefined) {
        stack.pop();
        open.delete(top.key);
        settled.add(top.key);
        order.push(top.key);
      } else if (open.has(child)) {
        circular.push(top.key);
      } else if (!settled.has(child) && needs.has(child)) {
        open.add(child);
        stack.push({ key: child, next: 0 });
      }
    }
  }
  return { order, circular };
}
