import type { PackLimits } from './pack/pack';

/** What a link may be and unpack to at most. */
export type LinkLimits = PackLimits & { readonly mostCharacters: number };

/** Well above what a browser's address line takes on every system, and above the largest yard; unpacking ends within a second or two. */
export const linkLimits: LinkLimits = { mostCharacters: 200_000, mostBits: 5_000_000, mostItems: 250_000 };
