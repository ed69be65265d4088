import { ruleValue, type Site } from '@footmark/site';
import type { DigByTree, TreeTaken } from './digInZones';
import type { PipeByTree } from './pipeInZones';
import type { TreeFinding } from './treeFinding';
import type { TreeZones } from './treeZones';

// Findings by the rule that the site has chosen, whose zone is the first of each list; of roots that hold a tree up, always.

function aboutTree({ tree, at, chosen, protected: isProtected }: TreeZones) {
  return {
    to: { at: { kind: 'feature', id: tree }, place: at } as const,
    zone: { tree, zone: chosen.rule, radius: chosen.radius, protected: isProtected },
  };
}

/** A pipe that lies there already harms no root; one that is planned may. */
export function sayOfPipe(tree: TreeZones, pipe: PipeByTree, findings: TreeFinding[]): void {
  const [chosen] = pipe.zones;
  if (chosen === undefined || chosen.length === 0) return;
  const { to, zone } = aboutTree(tree);
  findings.push({
    ...to,
    code: 'pipe-in-root-zone',
    severity: pipe.state === 'proposed' ? 'should' : 'note',
    rule: tree.chosen.row,
    values: {
      ...zone,
      path: pipe.path,
      state: pipe.state,
      length: chosen.length,
      distance: pipe.distance,
      side: pipe.side,
      boreDepth: pipe.bore.asked,
      cover: pipe.bore.cover,
      enough: pipe.bore.enough,
    },
  });
}

export function sayOfDig(
  tree: TreeZones,
  { dig, atLeast, zones, holding }: DigByTree,
  findings: TreeFinding[],
): void {
  const [chosen] = zones;
  if (chosen === undefined) return;
  const { to, zone } = aboutTree(tree);
  const { row } = tree.chosen;
  const { is, radius, fromTrunk, row: heldBy } = tree.held;
  if (chosen.dug > 0)
    findings.push({
      ...to,
      code: 'dig-in-root-zone',
      severity: 'should',
      rule: row,
      values: { ...zone, dig, share: chosen.share, atLeast },
    });
  if (chosen.spoil > 0)
    findings.push({
      ...to,
      code: 'spoil-in-root-zone',
      severity: 'should',
      rule: row,
      values: { ...zone, dig, share: chosen.spoil },
    });
  if (holding)
    findings.push({
      ...to,
      code: 'dig-in-structural-roots',
      severity: 'must',
      rule: heldBy,
      values: { ...zone, radius, dig, is, fromTrunk },
    });
}

export function sayOfAllDigs(
  site: Site,
  tree: TreeZones,
  { zones }: TreeTaken,
  findings: TreeFinding[],
): void {
  const [chosen] = zones;
  if (chosen === undefined || chosen.encroachment === null || chosen.encroachment === 'none') return;
  const { to, zone } = aboutTree(tree);
  const about = { ...to, rule: 'minorEncroachment' } as const;
  const values = { ...zone, share: chosen.share, limit: ruleValue(site, 'minorEncroachment') };
  findings.push(
    chosen.encroachment === 'minor'
      ? { ...about, code: 'minor-encroachment', severity: 'note', values }
      : {
          ...about,
          code: 'major-encroachment',
          severity: 'must',
          values: { ...values, structural: chosen.inner === true },
        },
  );
}
