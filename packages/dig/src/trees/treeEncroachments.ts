import type { Derived, Site } from '@footmark/site';
import type { Excavation } from '../excavation/excavation';
import {
  cutsHolding,
  type DigByTree,
  type TreeTaken,
  takenBy,
  takenTogether,
  zonesTaken,
} from './digInZones';
import { type PipeByTree, pipeByTree } from './pipeInZones';
import { sayOfAllDigs, sayOfDig, sayOfPipe } from './sayOfTrees';
import type { TreeFinding } from './treeFinding';
import { type TreeZones, treeZones } from './treeZones';

export type TreeEncroachments = {
  readonly trees: readonly TreeZones[];
  readonly pipes: readonly PipeByTree[];
  readonly digs: readonly DigByTree[];
  readonly totals: readonly TreeTaken[];
  readonly findings: readonly TreeFinding[];
};

/** What pipes and digs do to the trees of a site, by every rule; findings by the one that the site has chosen, and of roots that hold a tree up whatever that is. */
export function treeEncroachments(
  site: Site,
  derived: Derived,
  excavations: readonly Excavation[],
): TreeEncroachments {
  const { trees, findings: aboutTrees } = treeZones(site, derived);
  const findings = [...aboutTrees];
  const taken = excavations.flatMap((excavation) => {
    const ground = takenBy(excavation);
    return ground === null ? [] : [{ dig: excavation.dig.id, ground }];
  });
  const together = takenTogether(taken.map((t) => t.ground));

  const pipes: PipeByTree[] = [];
  const digs: DigByTree[] = [];
  const totals: TreeTaken[] = [];
  for (const tree of trees) {
    for (const on of derived.paths.values()) {
      const pipe = pipeByTree(site, derived, on, tree);
      if (pipe === null) continue;
      pipes.push(pipe);
      sayOfPipe(tree, pipe, findings);
    }
    for (const { dig, ground } of taken) {
      const zones = zonesTaken(site, tree, ground);
      if (zones === null) continue;
      const holding = cutsHolding(tree, ground);
      const found = { tree: tree.tree, dig, atLeast: ground.atLeast, zones, holding };
      digs.push(found);
      sayOfDig(tree, found, findings);
    }
    const zones = taken.length === 0 ? null : zonesTaken(site, tree, together);
    if (zones === null) continue;
    const holding = cutsHolding(tree, together);
    const total = { tree: tree.tree, atLeast: together.atLeast, zones, holding };
    totals.push(total);
    sayOfAllDigs(site, tree, total, findings);
  }
  return { trees, pipes, digs, totals, findings };
}
