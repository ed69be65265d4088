import { circleRegionArea, type Region, unionOf } from '@footmark/geometry';
import type { SiteRules, TreeRuleId } from '@footmark/site';
import type { Excavation } from '../excavation/excavation';
import { type Encroachment, encroachmentOf } from './encroachment';
import type { TreeZones } from './treeZones';

/** What of a zone is taken, as shares of its area. */
export type ZoneTaken = {
  readonly rule: TreeRuleId;
  readonly radius: number;
  /** By the top outline of what is dug. */
  readonly dug: number;
  /** By the heap of spoil. */
  readonly spoil: number;
  /** By both; where they overlap it counts once. */
  readonly share: number;
  /** Whether the roots that hold the tree up are cut; null where the rule knows no zone for them. */
  readonly inner: boolean | null;
  /** By AS 4970, else null. */
  readonly encroachment: Encroachment | null;
};

/** What a dig takes of a tree's zones. `atLeast`: its depth is not known all along, and it may take more. */
export type DigByTree = {
  readonly tree: string;
  readonly dig: string;
  readonly atLeast: boolean;
  /** By every rule, the chosen first. */
  readonly zones: readonly ZoneTaken[];
  /** Roots that hold the tree up are cut, by what digs are held against whatever rule is chosen. */
  readonly holding: boolean;
};

/** What all digs together take of a tree's zones. */
export type TreeTaken = Omit<DigByTree, 'dig'>;

/** The ground that digs take: `atLeast` where how far one reaches is not known, as its depth is not. */
export type TakenGround = { readonly dug: Region; readonly spoil: Region; readonly atLeast: boolean };

/** Areas below this (m²) are not taken: a square centimetre. */
const TAKEN_M2 = 1e-4;

/** Null where a dig has no place. */
export function takenBy({ ground, spoil }: Excavation): TakenGround | null {
  if (ground === null) return null;
  const heap = spoil === null || spoil.side === 'away' ? [] : spoil[spoil.side].outline;
  return { dug: ground.outline, spoil: heap, atLeast: ground.atLeast };
}

export function takenTogether(taken: readonly TakenGround[]): TakenGround {
  return {
    dug: unionOf(taken.map((t) => t.dug)),
    spoil: unionOf(taken.map((t) => t.spoil)),
    atLeast: taken.some((t) => t.atLeast),
  };
}

/** Whether digs cut roots that hold a tree up. */
export function cutsHolding({ at, held }: TreeZones, { dug }: TakenGround): boolean {
  return circleRegionArea(at, held.radius, dug) > TAKEN_M2;
}

/** What is taken of each of a tree's zones, exact: circles against polygons. Null where nothing is taken of any. */
export function zonesTaken(
  site: { readonly rules: SiteRules },
  { at, zones, held }: TreeZones,
  { dug, spoil }: TakenGround,
): readonly ZoneTaken[] | null {
  const within = (radius: number, region: Region) => {
    const area = circleRegionArea(at, radius, region);
    return area > TAKEN_M2 ? area : 0;
  };
  const widest = Math.max(held.radius, ...zones.map((z) => z.radius));
  if (within(widest, dug) + within(widest, spoil) === 0) return null;
  const both = spoil.length === 0 ? dug : unionOf([dug, spoil]);
  return zones.map((zone) => {
    const area = Math.PI * zone.radius ** 2;
    const share = within(zone.radius, both) / area;
    const inner = zone.inner === null ? null : within(zone.inner.radius, dug) > 0;
    return {
      rule: zone.rule,
      radius: zone.radius,
      dug: within(zone.radius, dug) / area,
      spoil: within(zone.radius, spoil) / area,
      share,
      inner,
      encroachment: zone.rule === 'as-4970' ? encroachmentOf(site, share, inner === true) : null,
    };
  });
}
