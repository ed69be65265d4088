import type { Target } from '@footmark/site';

/** What is the matter, and the way out: a sentence or two each. */
export type Said = { readonly text: string; readonly cure: string };

/** One line of a comparison. */
export type WayRow = { readonly name: string; readonly text: string };

/** A thing that has a card of its own, on which it need not be named. */
export type CardThing = Extract<Target, { kind: 'dig' | 'path' | 'feature' | 'reading' }>;

/** A file that cannot be opened, said with a line for each place in it that is wrong. */
export type SaidOfFile = Said & { readonly problems: readonly string[] };
