import { z } from 'zod';
import { asFound, foundAbout, foundWhere, givenPaint } from './asFound';
import { feature } from './feature';
import { fitEvidence, takenFit } from './fit';
import { knownLength, path, pathVertex, pipeLevel, stretch } from './path';
import { readingRef } from './readingRef';
import { clock, counterScale, groundState, head, reading, run, zero } from './run';
import { site, tapeMeasure, units } from './site';
import { ref, spot, vertex } from './spot';
import { pair, visit } from './visit';

const records = {
  units,
  tapeMeasure,
  ref,
  spot,
  vertex,
  feature,
  pipeLevel,
  pathVertex,
  stretch,
  knownLength,
  path,
  visit,
  clock,
  groundState,
  zero,
  counterScale,
  head,
  reading,
  run,
  readingRef,
  pair,
  fitEvidence,
  takenFit,
  foundAbout,
  foundWhere,
  givenPaint,
  asFound,
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
