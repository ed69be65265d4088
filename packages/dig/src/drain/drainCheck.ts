import type { Path } from '@footmark/site';
import type { CleanoutAsked, NarrowCleanout } from './cleanouts';
import type { CoverCheck } from './coverCheck';
import type { FallCheck } from './fallCheck';
import type { FlowCheck } from './flowCheck';
import type { TapDepth } from './tapDepth';
import type { Turn } from './turns';
import type { WaterSeparation } from './waterSeparation';

/** What the codes ask of one drain, and what of that is met. */
export type DrainCheck = {
  readonly path: string;
  readonly state: Path['state'];
  /** Along the pipe (m): in plan, and as a cable lies in it with slopes and drops. */
  readonly length: number;
  readonly developed: number;
  readonly fall: FallCheck;
  /** How it runs; null where its levels do not tell. */
  readonly flow: FlowCheck | null;
  readonly cover: CoverCheck;
  /** Null for a path that ends at no tap. */
  readonly tap: TapDepth | null;
  /** With the flow; those whose `by` is null are missing. */
  readonly cleanouts: readonly CleanoutAsked[];
  readonly narrowCleanouts: readonly NarrowCleanout[];
  readonly turns: readonly Turn[];
  /** Of the turns those that only a long sweep, or two gentler bends, may make. */
  readonly sharpTurns: readonly Turn[];
  /** The nearest first. */
  readonly water: readonly WaterSeparation[];
};
