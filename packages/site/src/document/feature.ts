import { z } from 'zod';
import { type FeatureKind, featureKindIds, type featureKinds, kindSpec } from '../kinds/featureKinds';
import { id, line } from './scalars';
import { type LegSpot, legSpot, type Vertex, vertex } from './spot';

/** Corners of one feature. */
export const MOST_VERTICES = 5000;
const FEWEST_VERTICES = { point: 1, line: 2, area: 3 } as const;

/** The fields of one kind, as its entry in the kinds table declares them. */
export type FieldsOf<Kind extends FeatureKind> = {
  [Name in keyof (typeof featureKinds)[Kind]['fields']]?: (typeof featureKinds)[Kind]['fields'][Name] extends {
    schema: infer Schema extends z.ZodType;
  }
    ? Exclude<z.infer<Schema>, undefined>
    : never;
};

export type FeatureOf<Kind extends FeatureKind> = {
  id: string;
  kind: Kind;
  /** What people call it; empty for none. */
  name: string;
  vertices: Vertex[];
  fields: FieldsOf<Kind>;
  /** For an area: the last course, back to the first point, as it was measured; without it, the last side is what is left. */
  closing?: LegSpot;
  /** For an area with a closing course: share the misclosure out by the compass rule. */
  balance?: 'compass';
  /** Not to be moved or changed by a slip of the hand. */
  locked?: true;
};

/** One thing in the yard. */
export type Feature = { [Kind in FeatureKind]: FeatureOf<Kind> }[FeatureKind];

export function fewestFeatureVertices(kind: FeatureKind): number {
  return FEWEST_VERTICES[kindSpec(kind).shape];
}

function schemaOf(kind: FeatureKind) {
  const spec = kindSpec(kind);
  const fewest = fewestFeatureVertices(kind);
  const most = spec.shape === 'point' ? 1 : MOST_VERTICES;
  const fields = Object.fromEntries(Object.entries(spec.fields).map(([name, field]) => [name, field.schema]));
  return z.strictObject({
    id,
    kind: z.literal(kind),
    name: line,
    vertices: z.array(vertex).min(fewest).max(most),
    fields: z.strictObject(fields),
    ...(spec.shape === 'area'
      ? { closing: legSpot.optional(), balance: z.literal('compass').optional() }
      : {}),
    locked: z.literal(true).optional(),
  });
}

const schemas = featureKindIds.map(schemaOf);

/** Validator of one feature, made from the kinds table. */
export const feature = z.discriminatedUnion(
  'kind',
  schemas as [(typeof schemas)[number], ...typeof schemas],
) as unknown as z.ZodType<Feature>; // the table gives the same shape to both, but a mapped list loses it for the compiler
