import type { Path, TreeRuleId } from '@footmark/site';
import type { DigFinding } from '../digFinding';
import type { HoldingRoots } from './holdingRoots';
import type { TreeAssumption } from './treeAssumption';

type Named = { tree: string };
type Zone = Named & { zone: TreeRuleId; radius: number; protected: boolean };

/** Values by code: things by their ids, lengths in metres, shares of the zone's area. */
export type TreeFindingValues = {
  /** No zone can be told by any rule. */
  'tree-without-diameter': Named;
  /** Facts that the chosen rule asks for and nobody gave; what each was taken as. */
  'tree-facts-assumed': Named & { zone: TreeRuleId; assumed: readonly TreeAssumption[] };
  'pipe-in-root-zone': Zone & {
    path: string;
    state: Path['state'];
    length: number;
    /** Pipe wall to trunk face; negative where they overlap. */
    distance: number;
    /** Of the pipe, seen with its flow, on which the tree stands. */
    side: 'left' | 'right';
    /** How deep boring under the roots is asked to be, the pipe's least cover there and whether that is enough; null where it is not known. */
    boreDepth: number;
    cover: number | null;
    enough: boolean | null;
  };
  /** `share`: with its spoil. `atLeast`: its depth is not known all along. */
  'dig-in-root-zone': Zone & { dig: string; share: number; atLeast: boolean };
  'spoil-in-root-zone': Zone & { dig: string; share: number };
  /** Where roots hold the tree up: AS 4970's structural root zone, or the diameters that are quoted for stability. */
  'dig-in-structural-roots': Zone & { dig: string } & Pick<HoldingRoots, 'is' | 'fromTrunk'>;
  /** Of all digs together, by AS 4970. */
  'minor-encroachment': Zone & { share: number; limit: number };
  'major-encroachment': Zone & { share: number; limit: number; structural: boolean };
};

export type TreeFinding = {
  [Code in keyof TreeFindingValues]: DigFinding<Code, TreeFindingValues[Code]>;
}[keyof TreeFindingValues];
