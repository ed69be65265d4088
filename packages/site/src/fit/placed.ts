/** On a pipe: the leg, counted from 0, and the share of it from its upstream end. */
export type LegPlace = { readonly path: string; readonly leg: number; readonly share: number };

/** By reading: on which leg the computation has what its lens saw. */
export type Looked = ReadonlyMap<string, LegPlace>;

/** By reading: the features that located its sonde, and the place on a pipe where the computation has it. */
export type Located = ReadonlyMap<string, { readonly locates: readonly string[]; readonly at: LegPlace }>;
