import { type DrainCheck, type DrainFinding, drainChecks } from '@footmark/dig';
import {
  derive,
  type Feature,
  INCH_M,
  type Path,
  type PathVertex,
  type Site,
  type SiteRules,
} from '@footmark/site';
import { pipe } from '../../packages/site/src/testing/yard';
import { digSite, spot } from './digSite';

export type Facts = Partial<Path> & {
  readonly rules?: Partial<SiteRules>;
  readonly features?: readonly Feature[];
};
export type Levels = Pick<PathVertex, 'level' | 'bend'>;

export const four = { from: 0, material: 'plastic', diameter: 4 * INCH_M, slope: 0 } as const;
export const topDepth = (inches: number): Levels => ({
  level: { is: 'depth-to-top', depth: inches * INCH_M },
});

/** A drain of 4 in through places in feet. */
export function drain(
  places: readonly (readonly [number, number, Levels?])[],
  { rules = {}, features = [], ...facts }: Facts = {},
): {
  readonly site: Site;
  readonly check: DrainCheck;
  readonly findings: readonly DrainFinding[];
  readonly codes: readonly string[];
} {
  const vertices = places.map(([x, y, levels = {}]) => ({ spot: spot(x, y), ...levels }));
  const site = digSite({
    things: { paths: [pipe('p', vertices, { stretches: [four], ...facts })], features: [...features] },
    rules,
  });
  const { paths, findings } = drainChecks(site, derive(site));
  const [check] = paths;
  if (check === undefined) throw new Error('no path');
  return { site, check, findings, codes: findings.map((f) => f.code) };
}
