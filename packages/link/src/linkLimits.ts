import type { PackLimits } from './pack/pack';

/** What a link may be and unpack to at most. */
export type LinkLimits = PackLimits & { readonly mostCharacters: number };

/** Well above what a browser's address line takes on every system, and above the largest yard (six thousand things); unpacking ends within half a second on a desk. */
export const linkLimits: LinkLimits = { mostCharacters: 200_000, mostBits: 3_000_000, mostItems: 250_000 };
