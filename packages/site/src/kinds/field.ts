import { z } from 'zod';
import { elevation, length, line, positiveLength } from '../document/scalars';

/** How a field is typed and printed: the edit card and the list read it, and so do the words for each language. */
export type FieldInput =
  | { readonly as: 'length' | 'diameter' | 'elevation' | 'text' | 'count' | 'flag' }
  | { readonly as: 'choice'; readonly choices: readonly string[] };

/** One property of a feature kind: its validator and how people enter it. All fields may be absent (not given). */
export type FieldSpec<Schema extends z.ZodType = z.ZodType> = {
  readonly schema: Schema;
  readonly input: FieldInput;
};

/** A length in metres, zero allowed. */
export const lengthField = () => ({ schema: length.optional(), input: { as: 'length' as const } });

/** A diameter in metres, above zero. */
export const diameterField = () => ({
  schema: positiveLength.max(100).optional(),
  input: { as: 'diameter' as const },
});

/** A level in metres above the site's datum. */
export const elevationField = () => ({ schema: elevation.optional(), input: { as: 'elevation' as const } });

export const textField = () => ({ schema: line.optional(), input: { as: 'text' as const } });

/** A whole number from 1 to 99. */
export const countField = () => ({
  schema: z.number().int().min(1).max(99).optional(),
  input: { as: 'count' as const },
});

export const flagField = () => ({ schema: z.boolean().optional(), input: { as: 'flag' as const } });

export function choiceField<const Choices extends readonly [string, ...string[]]>(...choices: Choices) {
  return { schema: z.enum(choices).optional(), input: { as: 'choice' as const, choices } };
}
