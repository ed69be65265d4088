import type { TakenFit } from '../document/fit';
import { type IntegrityProblem, spotProblems } from '../document/integrity';
import type { Path, PathVertex } from '../document/path';
import { sameValue } from '../document/sameValue';
import type { Site } from '../document/site';

/** What a fit made of one run. Lengths in metres. */
export type RunCorrection = {
  readonly scale: number;
  readonly zero: number;
  readonly entryLeg: number;
  /** By reading: the count that was read, and the corrected one. */
  readonly counters: ReadonlyMap<string, { readonly read: number; readonly counted: number }>;
};

/**
 * The fit that was taken, if it still stands: the lines lie as it put them, what was said of the runs is what it rests on, and the lines can
 * be drawn as they were before it. Null without one, and after a change by hand.
 */
export function standingFit(site: Site): TakenFit | null {
  const { fit } = site;
  if (fit === undefined) return null;
  const paths = new Map(site.paths.map((p) => [p.id, p]));
  const runs = new Map(site.runs.map((r) => [r.id, r]));
  const lines = fit.paths.every(({ id, fitted }) => liesAs(paths.get(id), fitted));
  const said = fit.runs.every(({ id, from }) => {
    const run = runs.get(id);
    return run !== undefined && sameValue(run.scale, from.scale) && sameValue(run.zero, from.zero);
  });
  return lines && said && canBeDrawn(site, fit) ? fit : null;
}

/** The site with its lines as they were drawn before the fit that stands; the site itself without one. */
export function siteAsDrawn(site: Site): Site {
  const fit = standingFit(site);
  return fit === null ? site : withDrawnLines(site, fit);
}

function withDrawnLines(site: Site, fit: TakenFit): Site {
  const drawn = new Map(fit.paths.map((p) => [p.id, p.drawn]));
  return {
    ...site,
    paths: site.paths.map((path) => {
      const vertices = drawn.get(path.id);
      return vertices === undefined ? path : { ...path, vertices: withFactsOf(path, vertices) };
    }),
  };
}

/** What the lines were drawn from is still there, and is not told from them. */
function canBeDrawn(site: Site, fit: TakenFit): boolean {
  const drawn = withDrawnLines(site, fit);
  const fitted = new Set(fit.paths.map((p) => p.id));
  const isFitted = ([list, index]: IntegrityProblem['path']) =>
    list === 'paths' && fitted.has(drawn.paths[Number(index)]?.id ?? '');
  // what else hangs on points that the fit added is freed when it is dropped
  return spotProblems(drawn).every(({ code, path }) => code === 'unknown-point' && !isFitted(path));
}

/** What a standing fit made of each run, by id. */
export function correctionsOf(fit: TakenFit | null): ReadonlyMap<string, RunCorrection> {
  if (fit === null) return new Map();
  const counters = new Map(fit.counters.map((c) => [c.reading, c]));
  return new Map(fit.runs.map(({ id, scale, zero, entryLeg }) => [id, { scale, zero, entryLeg, counters }]));
}

function liesAs(path: Path | undefined, fitted: readonly PathVertex[]): boolean {
  return (
    path?.vertices.length === fitted.length &&
    path.vertices.every((v, i) => v.id === fitted[i]?.id && sameValue(v.spot, fitted[i]?.spot))
  );
}

/** Drawn vertices with what is known of the pipe there today. */
function withFactsOf(path: Path, drawn: readonly PathVertex[]): PathVertex[] {
  const facts = new Map(path.vertices.map((v) => [v.id, v]));
  return drawn.map((v) => ({ ...(facts.get(v.id) ?? v), spot: v.spot }));
}
