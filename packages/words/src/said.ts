/** What is the matter, and the way out: a sentence or two each. */
export type Said = { readonly text: string; readonly cure: string };

/** A file that cannot be opened, said with a line for each place in it that is wrong. */
export type SaidOfFile = Said & { readonly problems: readonly string[] };
