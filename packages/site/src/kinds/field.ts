import { z } from 'zod';
import { readingRef } from '../document/readingRef';
import { elevation, id, length, line, positiveLength } from '../document/scalars';

/** How a field is typed and printed: the edit card and the list read it, and so do the words for each language. */
export type FieldInput =
  | { readonly as: 'length' | 'diameter' | 'diameters' | 'elevation' | 'text' | 'flag' | 'file' | 'reading' }
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

/** Diameters in metres, one for each of several stems. */
export const diametersField = () => ({
  schema: z.array(positiveLength.max(100)).min(2).max(20).optional(),
  input: { as: 'diameters' as const },
});

/** A picture in the device's own store, by its id there. */
export const fileField = () => ({ schema: id.optional(), input: { as: 'file' as const } });

/** A level in metres above the site's datum. */
export const elevationField = () => ({ schema: elevation.optional(), input: { as: 'elevation' as const } });

/** A reading of one of the site's runs. */
export const readingField = () => ({ schema: readingRef.optional(), input: { as: 'reading' as const } });

/** A standard deviation in metres. */
export const sigmaField = () => ({
  schema: positiveLength.max(100).optional(),
  input: { as: 'length' as const },
});

export const textField = () => ({ schema: line.optional(), input: { as: 'text' as const } });

export const flagField = () => ({ schema: z.boolean().optional(), input: { as: 'flag' as const } });

export function choiceField<const Choices extends readonly [string, ...string[]]>(...choices: Choices) {
  return { schema: z.enum(choices).optional(), input: { as: 'choice' as const, choices } };
}
