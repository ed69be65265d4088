import type { FeatureKind, FieldsOf, featureKinds, Run, Severity, Spot, Zero } from '@footmark/site';

type FieldTables = { [Kind in FeatureKind]: (typeof featureKinds)[Kind]['fields'] };

/** Every field that some kind of feature has. */
export type FieldName = { [Kind in FeatureKind]: keyof FieldTables[Kind] & string }[FeatureKind];

type ChoicesOf<Field> = Field extends { input: { as: 'choice'; choices: readonly (infer Choice)[] } }
  ? Choice
  : never;

/** Every value that a choice field of some kind can have. */
export type ChoiceValue = {
  [Kind in FeatureKind]: {
    [Name in keyof FieldTables[Kind]]: ChoicesOf<FieldTables[Kind][Name]>;
  }[keyof FieldTables[Kind]];
}[FeatureKind] &
  string;

/** Other names for fields of single kinds, where the common one would mislead. */
export type FieldNamesByKind = {
  readonly [Kind in FeatureKind]?: { readonly [Name in keyof FieldsOf<Kind>]?: string };
};

export type ZeroKind = Zero['at'];
export type SpotKind = Spot['by'];
export type RunDirection = Run['direction'];
export type { Severity };
