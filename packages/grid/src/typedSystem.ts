import { ok, type Result } from '@footmark/geometry';
import { type DefinitionProblem, mapProjection } from '@footmark/site';
import type { GridSystem } from './gridSystem';
import { gridUnitOf } from './gridUnit';

/** What people type: a code of the register if they know it, a name, and the definition. */
type TypedDefinition = {
  readonly epsg?: number;
  readonly name: string;
  /** A PROJ string or WKT. */
  readonly definition: string;
};

/** A system by its typed definition. The code is only kept with it: no register is asked whether the two belong together. */
export function typedSystem({
  epsg,
  name,
  definition,
}: TypedDefinition): Result<GridSystem, DefinitionProblem> {
  const projection = mapProjection(definition);
  if (!projection.ok) return projection;
  return ok({
    kind: 'typed',
    epsg: epsg ?? null,
    name,
    datum: null,
    unit: gridUnitOf(projection.value.metresPerUnit),
    definition: definition.trim(),
    area: null,
  });
}
