import type { TakenFit } from '../document/fit';
import type { Site } from '../document/site';
import { type DerivedFeature, deriveFeatures } from './deriveFeatures';
import { type DerivedPath, derivePaths } from './derivePaths';
import type { Finding } from './finding';
import { type ResolvedPoint, type ResolvedPoints, resolvePoints } from './resolvePoints';
import { standingFit } from './standingFit';

/** Where things are, and nothing that follows from it: as much of a site as can be told anew while a hand moves something. */
export type Places = {
  /** By `of/at`. */
  readonly points: ReadonlyMap<string, ResolvedPoint>;
  readonly features: ReadonlyMap<string, DerivedFeature>;
  readonly paths: ReadonlyMap<string, DerivedPath>;
};

/** Places every point, feature and path of a site. `fit`: the one that stands. */
export function derivePlaces(
  site: Site,
  fit: TakenFit | null = standingFit(site),
): Places & { readonly resolved: ResolvedPoints; readonly findings: readonly Finding[] } {
  const resolved = resolvePoints(site);
  const { features, findings: aboutFeatures } = deriveFeatures(site, resolved);
  const { paths, findings: aboutPaths } = derivePaths(site, resolved, fit);
  const findings = [...resolved.findings, ...aboutFeatures, ...aboutPaths];
  return { points: resolved.points, features, paths, resolved, findings };
}
