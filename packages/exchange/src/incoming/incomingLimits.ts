// What is taken in at most: far above any yard, far below what stops a phone.

/** Characters of a file's text. */
export const MOST_CHARACTERS = 60_000_000;
export const MOST_THINGS = 100_000;
export const MOST_POINTS = 500_000;
/** Folders in folders, collections in collections, blocks in blocks. */
export const MOST_DEPTH = 32;
/** Characters of a name or a layer: a site's names have 200, with the number that a second of one name gets. */
export const MOST_NAME_CHARACTERS = 180;
/** Things or groups between two reports: a few milliseconds' work. */
export const STEP = 2000;
