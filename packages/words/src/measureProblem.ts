/** What contradicts itself in an arc as a plat tells it: metres, radians for `past-full-circle`. */
export type ArcProblem =
  | { readonly code: 'not-positive' }
  | { readonly code: 'past-full-circle'; readonly given: number }
  | {
      readonly code:
        | 'delta-against-arc-length'
        | 'chord-past-diameter'
        | 'chord-against-delta'
        | 'chord-against-arc-length';
      readonly given: number;
      readonly computed: number;
    };

/** Why measurements from two points lead to no place; `gap` in metres. */
export type SpotProblem =
  | { readonly code: 'same-reference' }
  | { readonly code: 'too-short' | 'too-long'; readonly gap: number };
