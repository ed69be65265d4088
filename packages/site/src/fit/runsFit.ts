import type { Point } from '@footmark/geometry';
import type { ObservationTag, ZoneSource } from './observationTag';

/** Where a thing is at 95 %. Metres and radians. */
export type SearchZone = {
  /** The 95 % ellipse about the mark: half axes, and the azimuth of the longer. */
  readonly semiMajor: number;
  readonly semiMinor: number;
  readonly azimuth: number;
  /** Half of the 95 % range along and across the pipe. */
  readonly along: number;
  readonly across: number;
  /** The hole that holds the ellipse and the pipe, with its length along the pipe. */
  readonly hole: { readonly length: number; readonly width: number };
  /**
   * By source, its standard deviation along and across the pipe. Sources that add nothing are left out. Their squares sum to the zone's but
   * for what the mark is off from where the computation has it.
   */
  readonly makeUp: readonly {
    readonly source: ZoneSource;
    readonly along: number;
    readonly across: number;
  }[];
};

/** A mark as the fit sees it. */
export type FittedMark = {
  /** About the mark where it is shown. */
  readonly zone: SearchZone;
  /** Where the evidence puts it, how far from where it is shown, and how sure it is there; null without evidence. */
  readonly fitted: { readonly at: Point; readonly off: number; readonly zone: SearchZone } | null;
};

/** One observation of the fit. Values in metres, radians or, for a scale, true length per counted length. */
export type FitObservation = {
  readonly tag: ObservationTag;
  /** See `observationName`: what people set aside. */
  readonly name: string;
  readonly observed: number;
  readonly sigma: number;
  /** Fitted less observed. */
  readonly residual: number;
  /** How surprising that is, in standard deviations of its own; 0 for one that nothing checks. */
  readonly standardized: number;
  /** Share of an error in it that would show in its residual, 0 to 1. */
  readonly redundancy: number;
};

/** Observations of which any one, by its blunder, explains the same misfit; alone where the others tell it apart. */
export type BlunderGroup = readonly {
  readonly tag: ObservationTag;
  readonly name: string;
  readonly standardized: number;
  /** By how much the observed value is too large, were it the only wrong one; what it would have to be is observed − blunder. */
  readonly blunder: number;
  readonly observed: number;
}[];

/** What the fit makes of a run. */
export type FittedRun = {
  readonly id: string;
  readonly scale: { readonly said: number; readonly fitted: number; readonly sigma: number };
  /** Counter at the zero (m). */
  readonly zero: { readonly said: number; readonly fitted: number; readonly sigma: number };
  /** Cable between zero and pipe (m); the same said and fitted with sigma 0 where there is no riser. */
  readonly entryLeg: { readonly said: number; readonly fitted: number; readonly sigma: number };
};

/** A pipe's points as the fit puts them. One with `vertex` null is new: where a locate found the pipe to stray from its leg. */
export type FittedPath = {
  readonly id: string;
  readonly points: readonly {
    readonly vertex: string | null;
    /** Of a new point: the vertex before it, and the features that located the pipe there. */
    readonly added: { readonly after: string; readonly locates: readonly string[] } | null;
    readonly at: Point;
    /** It was measured; else it was put down by eye. */
    readonly measured: boolean;
    /** How sure its place was before the evidence (m, standard deviation of the worse axis). */
    readonly sigma: number;
    /** From where it was drawn (m). */
    readonly moved: number;
  }[];
};

export type CorrectedCount = { readonly read: number; readonly counted: number };

/**
 * `no-evidence`: nothing but the drawing and the counters, so nothing to fit; `fitted`; `not-converged`: the observations contradict
 * each other so much that no place fits them; `undetermined`: some unknowns hang on nothing (values in `loose`).
 */
export type FitStatus = 'no-evidence' | 'fitted' | 'not-converged' | 'undetermined';

/** All runs, marks and lines weighed together. */
export type RunsFit = {
  readonly status: FitStatus;
  /** Names of the observations about the unknowns that hang on nothing. */
  readonly loose: readonly string[];
  /** By reading id; marks without a place are missing. */
  readonly marks: ReadonlyMap<string, FittedMark>;
  /** Evidence first, in the order of the site, then what the fit starts from. */
  readonly observations: readonly FitObservation[];
  /** Names that people set aside and that are about something in the site. */
  readonly aside: readonly ObservationTag[];
  /** Most suspect first. Only what is significant. */
  readonly blunders: readonly BlunderGroup[];
  readonly runs: readonly FittedRun[];
  readonly paths: readonly FittedPath[];
  /** Standard deviation of unit weight; null without redundancy. */
  readonly sigma0: number | null;
  readonly dof: number;
  /** The misfit of it all against what the standard deviations lead to expect; null without redundancy. */
  readonly test: { readonly statistic: number; readonly upper: number; readonly passed: boolean } | null;
  readonly iterations: number;
  /** Counts that the fit corrected (m, counted as if never set anew), by reading: what was read, and what it would have been. */
  readonly counters: ReadonlyMap<string, CorrectedCount>;
  /** The fit that was taken stands: the lines are shown as it put them. */
  readonly taken: boolean;
  /** Longest way (m) that any point of a pipe or any mark would still move, were the fit taken; 0 when all is as fitted. */
  readonly pending: number;
};
