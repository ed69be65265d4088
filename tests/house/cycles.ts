/**
 * Circles in a directed graph: for each edge that closes one, the way round, first node repeated at the end. Not every circle
 * of a tangle is listed, but the list is empty exactly when there is none.
 */
export function findCycles(graph: ReadonlyMap<string, readonly string[]>): readonly (readonly string[])[] {
  const cycles: string[][] = [];
  const done = new Set<string>();
  const way: string[] = [];

  const visit = (node: string): void => {
    const open = way.indexOf(node);
    if (open >= 0) {
      cycles.push([...way.slice(open), node]);
      return;
    }
    if (done.has(node)) return;
    way.push(node);
    for (const next of graph.get(node) ?? []) visit(next);
    way.pop();
    done.add(node);
  };

  for (const node of [...graph.keys()].sort()) visit(node);
  return cycles;
}
