import type { EdgeClearance, Excavation, LandCrossing, TreeZone, Whose } from '@footmark/dig';
import type {
  MarkReach,
  ObservationKind,
  PipeMaterial,
  RunsFit,
  SearchZone,
  Site,
  Target,
  Units,
} from '@footmark/site';
import type { DigDrawing } from './dig/digDrawing';

/** A circle about a tree: the zone of the rule that the site has chosen, or that of the roots that hold the tree up. */
export type RootZone = Readonly<{
  is: 'chosen' | NonNullable<TreeZone['inner']>['is'];
  rule: TreeZone['rule'];
  radius: number;
}>;

/** What the app's language says of things. A word that is absent or empty is left out of its label. */
export type DrawingWords = Readonly<{
  observation?: (kind: ObservationKind) => string;
  material?: (material: PipeMaterial) => string;
  /** Beside a locate: the mark that it is of, and how far (m) off the computed place it was found, null to say nothing of that. */
  located?: (mark: string, off: number | null, units: Units) => string;
  /** Beside a hole: its size (m) along and across the pipe. */
  hole?: (hole: SearchZone['hole'], units: Units) => string;
  /** On a stretch of that length (m) that no camera has seen. */
  unseen?: (length: number, units: Units) => string;
  /** Beside a fitted line, and beside the outline that a mark cannot lie outside of. */
  fitted?: string;
  reach?: string;
  /** Beside a planned dig: how deep it is and, in full, how wide at the top. */
  excavation?: (excavation: Excavation, said: 'full' | 'brief', units: Units) => string;
  /** On a heap of spoil: how much (m³) it is, loose. */
  spoil?: (volume: number, units: Units) => string;
  rootZone?: (zone: RootZone, units: Units) => string;
  /** Beside a pipe that is on others' land, and where it crosses from one land to the other. */
  whose?: (whose: Whose) => string;
  landCrossing?: (crossing: LandCrossing, site: Site) => string;
  /**
   * On the line that a dig's bottom may reach: how flat (across over down) the ground bears below the footing, null where the face that is cut back
   * reaches further; and how far (m) off that is.
   */
  footingLine?: (influence: number | null, reach: number, units: Units) => string;
  /** On a dimension line: how far it is to its other end, what that is and, in full, what is asked. */
  clearance?: (clearance: EdgeClearance, other: Target, said: 'full' | 'brief', site: Site) => string;
}>;

/** What to bring out. */
export type Highlight = Readonly<{
  /** Its ties, its zone and its hole are drawn, and it is ringed. */
  mark?: Readonly<{ run: string; id: string }>;
  /** A point that sets a proposed path out: its ties are drawn, and it is ringed. */
  setOut?: Readonly<{ path: string; number: number }>;
  /** Id of a feature: how near pipes and digs come to it is dimensioned, and a locate says how far off it is. */
  feature?: string;
  /** Ids of a pipe and of a dig: what is too near to it is dimensioned. */
  path?: string;
  dig?: string;
}>;

export type DrawOptions = Readonly<{
  words?: DrawingWords;
  highlight?: Highlight;
  /** Whether lengths and bearings are written along walls, boundaries and the pipe. Default true. */
  dimensions?: boolean;
  /** The runs weighed together: search zones, and where the evidence puts lines and marks. */
  fit?: RunsFit;
  /** What the chosen mark, and the pipe to it, cannot lie outside of by lengths of cable alone. */
  reach?: MarkReach;
  /** What is to be dug and what stands in its way. */
  dig?: DigDrawing;
}>;
