/** What a finding is about, so that a screen can show the place. */
export type Target =
  | { readonly kind: 'site' }
  | { readonly kind: 'feature'; readonly id: string; readonly vertex?: string }
  | { readonly kind: 'path'; readonly id: string; readonly vertex?: string }
  | { readonly kind: 'run'; readonly id: string }
  | { readonly kind: 'reading'; readonly run: string; readonly id: string }
  | { readonly kind: 'dig'; readonly id: string }
  /** A point that sets a path out, by its number on it. */
  | { readonly kind: 'set-out'; readonly path: string; readonly number: number };

/** `error`: something cannot be computed; `warning`: it can, but do not trust it unseen; `note`: worth knowing. */
export type Severity = 'error' | 'warning' | 'note';

/** Values by code, in metres and radians, or the names that people gave. Sentences are made of them elsewhere. */
export type FindingValues = {
  // points
  'tapes-too-short': { gap: number; a: string; b: string };
  'tapes-too-long': { gap: number; a: string; b: string };
  'tapes-same-place': { a: string; b: string };
  'tapes-not-converged': { a: string };
  'tapes-one-way': { axis: number | null };
  'tapes-disagree': { worst: string; by: number };
  'weak-cut': { cut: number };
  'line-has-no-length': { a: string; b: string };
  'tree-has-no-diameter': Record<never, never>;
  'outline-crosses-itself': Record<never, never>;
  'boundary-misclosure': { misclosure: number; ratio: number; balanced: boolean };
  'cannot-balance': { because: 'no-closing' | 'held' };
  // frame
  'north-line-has-no-length': { a: string; b: string };
  'north-needs-two-control-points': { points: number };
  'control-points-coincide': Record<never, never>;
  'control-too-close': { sigma: number; apart: number };
  'control-scale-differs': { scale: number };
  'control-inaccurate': { accuracy: number; limit: number };
  'control-disagrees': { residual: number; accuracy: number };
  'control-too-far': { reach: number };
  // pictures
  'underlay-span-is-nothing': { underlay: string };
  'underlay-pairs-coincide': { underlay: string };
  'underlay-pair-disagrees': { underlay: string; pair: number; by: number };
  // paths
  'path-too-few-points': Record<never, never>;
  'path-arc-taken-straight': Record<never, never>;
  'path-leg-has-no-length': { leg: number };
  'bend-does-not-fit': { vertices: number };
  'branch-apart-from-path': { distance: number };
  // levels and slopes: stations in plan metres, slopes as fall over run with their standard deviation
  'slope-too-flat': { from: number; to: number; slope: number; sigma: number; least: number };
  'slope-against-flow': { from: number; to: number; slope: number; sigma: number };
  'slope-unsure': {
    from: number;
    to: number;
    slope: number;
    sigma: number;
    least: number;
    /** Further stretches of which the same is to be said. */
    others: number;
    /** From the first known level to the last the pipe does fall enough. */
    whole: boolean;
  };
  'levels-disagree': { by: number; allowed: number; a: string; b: string };
  'invert-above-ground': { by: number; station: number };
  // runs
  'run-has-no-entry': Record<never, never>;
  'run-has-no-path': Record<never, never>;
  'path-cannot-be-computed': { path: string };
  'entry-not-on-path': { entry: string; path: string; distance: number; reach: number };
  'entry-beside-path': { entry: string; path: string; distance: number };
  'branch-not-on-run': { branch: string };
  'zero-point-not-on-run': Record<never, never>;
  'sweep-does-not-fit': { riser: number; sweepRadius: number };
  // readings
  'reading-before-zero': { reading: number; zero: number };
  'reading-in-riser': { short: number };
  'reading-off-known-way': { beyond: number; length: number };
  'reading-past-end': { beyond: number; length: number; path: string };
  'counter-went-back': { reading: number; before: string; beforeReading: number };
  'reading-in-drop': Record<never, never>;
  'mark-under-building': { building: string };
  'paint-under-building': { building: string };
  'no-ties': { within: number };
  'no-check-tie': Record<never, never>;
  'ties-weak': { cut: number };
  'tie-from-assumed': { from: string };
  'seen-point-not-on-run': Record<never, never>;
  // locates
  'locate-has-no-reading': Record<never, never>;
  'locate-reading-has-no-place': { reading: string };
  'locate-depth-rough': Record<never, never>;
  // pairs
  'pair-of-one-run': { a: string; b: string };
  'pair-on-two-paths': { a: string; b: string; pathA: string; pathB: string };
  'cables-too-short': { a: string; b: string; pointA: string; pointB: string; gap: number };
  // what crews found: the label that is painted, and who says so
  'as-found-mark-gone': { label: string; by: string };
  'as-found-mark-moved': { label: string; by: string; moved: number };
  'as-found-no-place': { label: string; by: string };
  'as-found-outside': { label: string; by: string; along: number; across: number };
  /** `a` and `b`: who says so. */
  'as-found-disagree': { label: string; a: string; b: string; apart: number };
  'as-found-depths-disagree': { label: string; a: string; b: string; apart: number };
  'as-found-and-not-found': { label: string; a: string; b: string };
};

export type FindingCode = keyof FindingValues;

export type FindingOf<Code extends FindingCode> = {
  readonly code: Code;
  readonly severity: Severity;
  readonly at: Target;
  readonly values: Readonly<FindingValues[Code]>;
};

/** Something about the site that its people should know. Codes and values only: language is made elsewhere. */
export type Finding = { [Code in FindingCode]: FindingOf<Code> }[FindingCode];

export function finding<Code extends FindingCode>(
  code: Code,
  severity: Severity,
  at: Target,
  values: FindingValues[Code],
): Finding {
  // a generic code cannot be seen by the compiler as one member of the union, though it always is
  return { code, severity, at, values } as unknown as Finding;
}
