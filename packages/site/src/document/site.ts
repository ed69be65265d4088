import { z } from 'zod';
import { sigmaNames } from '../rules/sigmas';
import { asFound } from './asFound';
import { digging } from './dig';
import { feature } from './feature';
import { takenFit } from './fit';
import { frame } from './frame';
import { path } from './path';
import { run } from './run';
import { id, length, line, positiveLength, prose } from './scalars';
import { siteRules } from './siteRules';
import { underlay } from './underlay';
import { pair, visit } from './visit';

/** Version of the site file that this program writes. Every change of shape raises it by one and adds a migration. */
export const SITE_VERSION = 3;

/** The word that tells a site file from any other JSON. */
export const SITE_FORMAT = 'footmark-site';

/** How measurements are typed and printed. `ft-in`: feet and inches, `ft`: decimal feet, `m`: metres. */
export const units = z.strictObject({
  length: z.enum(['ft-in', 'ft', 'm']),
  diameter: z.enum(['in', 'mm']),
  direction: z.enum(['bearing', 'azimuth']),
});
export type Units = z.infer<typeof units>;

/** The crew's tape: its length (m) and the standard deviation (m) of one pull. */
export const tapeMeasure = z.strictObject({
  length: positiveLength.max(1000),
  sigma: positiveLength.max(10),
});
export type TapeMeasure = z.infer<typeof tapeMeasure>;

/** How many of each a site holds at most. */
export const MOST_IN_SITE = {
  underlays: 20,
  features: 20_000,
  paths: 500,
  runs: 500,
  visits: 500,
  pairs: 5000,
  different: 5000,
  asFound: 5000,
} as const;

/**
 * The whole site: plain data, metres and radians in the site frame.
 * Nothing that can be computed is stored in it.
 */
export const site = z.strictObject({
  format: z.literal(SITE_FORMAT),
  version: z.literal(SITE_VERSION),
  id,
  name: line,
  address: line,
  note: prose,
  createdAt: z.iso.datetime(),
  units,
  frame,
  tape: tapeMeasure,
  /** Entry points further than this (m) from a path are not on it. */
  entryReach: length.max(100),
  /** Standard deviations that this site has others of than the rules table. */
  sigmas: z.partialRecord(z.enum(sigmaNames), positiveLength.max(1000)),
  underlays: z.array(underlay).max(MOST_IN_SITE.underlays),
  features: z.array(feature).max(MOST_IN_SITE.features),
  paths: z.array(path).max(MOST_IN_SITE.paths),
  visits: z.array(visit).max(MOST_IN_SITE.visits),
  runs: z.array(run).max(MOST_IN_SITE.runs),
  pairs: z.array(pair).max(MOST_IN_SITE.pairs),
  /** Readings that look like one thing, and of which people know that they are two. */
  different: z.array(pair).max(MOST_IN_SITE.different),
  rules: siteRules,
  digging,
  /** What crews found, in the order in which it came in. */
  asFound: z.array(asFound).max(MOST_IN_SITE.asFound),
  /** Observations that people have set aside, by the names that the fit has for them. */
  setAside: z.array(line).max(10_000),
  /** The fit that was taken last. */
  fit: takenFit.optional(),
});
export type Site = z.infer<typeof site>;
