import { z } from 'zod';
import { feature } from './feature';
import { path, pathVertex, stretch } from './path';
import { clock, reading, run, zero } from './run';
import { site, tapeMeasure, units } from './site';
import { ref, spot, vertex } from './spot';

const records = {
  units,
  tapeMeasure,
  ref,
  spot,
  vertex,
  feature,
  pathVertex,
  stretch,
  path,
  clock,
  zero,
  reading,
  run,
};

/**
 * The site file's shape as a JSON Schema (draft 2020-12), made from the validator. It cannot say that names must lead
 * somewhere: `integrityProblems` checks that.
 */
export function siteJsonSchema(): Record<string, unknown> {
  const names = z.registry<{ id?: string; title?: string }>();
  for (const [id, schema] of Object.entries(records)) names.add(schema, { id });
  names.add(site, { title: 'Footmark site file' });
  return z.toJSONSchema(site, { io: 'input', metadata: names });
}
