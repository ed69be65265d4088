import type { Point } from '@footmark/geometry';
import {
  type Derived,
  type Site,
  stemDiameterOf,
  type TreeRuleId,
  treeRuleIds,
  treeRuleOf,
} from '@footmark/site';
import { type HoldingRoots, stabilityRoots, structuralRoots } from './holdingRoots';
import type { TreeFinding } from './treeFinding';
import { type TreeZone, treeZone } from './treeZone';

/** A tree with its root zones by every rule. */
export type TreeZones = {
  /** Of the feature. */
  readonly tree: string;
  readonly at: Point;
  /** The one diameter (m) that it counts with, of several stems the equivalent. */
  readonly diameter: number;
  readonly protected: boolean;
  /** By the rule that the site has chosen. */
  readonly chosen: TreeZone;
  /** All, the chosen first. */
  readonly zones: readonly TreeZone[];
  /** Where roots hold it up, whatever rule is chosen: by AS 4970 and by what is quoted for stability. */
  readonly holding: readonly HoldingRoots[];
  /** What digs are held against: those of the chosen rule, where it knows any, else the wider. */
  readonly held: HoldingRoots;
};

/** The root zones of all trees, in the order of the site. A tree without a diameter has none, and a finding says so. */
export function treeZones(
  site: Site,
  derived: Pick<Derived, 'features'>,
): { readonly trees: readonly TreeZones[]; readonly findings: readonly TreeFinding[] } {
  const chosenRule = treeRuleOf(site);
  const others = treeRuleIds.filter((rule) => rule !== chosenRule);
  const trees: TreeZones[] = [];
  const findings: TreeFinding[] = [];
  for (const { feature, points } of derived.features.values()) {
    const [place] = points;
    if (feature.kind !== 'tree' || place === undefined) continue;
    const about = { at: { kind: 'feature', id: feature.id }, place } as const;
    const diameter = stemDiameterOf(feature);
    if (diameter === null) {
      findings.push({
        ...about,
        code: 'tree-without-diameter',
        severity: 'should',
        rule: null,
        values: { tree: feature.id },
      });
      continue;
    }
    const zoneBy = (rule: TreeRuleId) => treeZone(site, feature, diameter, rule);
    const chosen = zoneBy(chosenRule);
    const { assumed } = chosen;
    if (assumed.length > 0)
      findings.push({
        ...about,
        code: 'tree-facts-assumed',
        severity: 'note',
        rule: chosen.row,
        values: { tree: feature.id, zone: chosenRule, assumed },
      });
    const holding = [structuralRoots(site, feature, diameter), stabilityRoots(site, diameter)] as const;
    const [structural, stability] = holding;
    const wider = structural.radius >= stability.radius ? structural : stability;
    trees.push({
      tree: feature.id,
      at: place,
      diameter,
      protected: feature.fields.protected === true,
      chosen,
      zones: [chosen, ...others.map(zoneBy)],
      holding,
      held: chosen.inner ?? wider,
    });
  }
  return { trees, findings };
}
