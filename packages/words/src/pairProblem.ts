/** Why two readings cannot be a pair: the same reading, both of one run, or paired already. */
export type PairProblem = 'itself' | 'one-run' | 'paired';
