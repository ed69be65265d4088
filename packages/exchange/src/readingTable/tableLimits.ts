/** A longer text is refused whole, because half a table would look like a table. */
export const MOST_TABLE_CHARACTERS = 2_000_000;

/** As many readings as a run holds; rows that cannot be read count too. */
export const MOST_TABLE_ROWS = 5000;

/** A row with more cells is not of this table. */
export const MOST_TABLE_COLUMNS = 100;

export const MOST_CELL_CHARACTERS = 2000;

/** As long as a reading's note may be. */
export const MOST_NOTE_CHARACTERS = 5000;

/** A measure is far shorter; the parsers of measures are not made for long texts. */
export const MOST_MEASURE_CHARACTERS = 40;

/** The name of a thing seen is far shorter. */
export const MOST_NAME_CHARACTERS = 80;

/** A heading is read so far. */
export const MOST_HEADING_CHARACTERS = 200;

/** A problem quotes this much of the cell. */
export const MOST_QUOTED_CHARACTERS = 200;

/** The site document's largest counter, metres. */
export const LARGEST_COUNTER_M = 10_000;

/** The site document's latest place in a recording, seconds. */
export const LATEST_VIDEO_S = 86_400;

/** Titles may stand above the header, in so many rows. */
export const HEADER_WITHIN_ROWS = 20;

/** The separator and, without a header, the columns are told by so many rows. */
export const SAMPLE_ROWS = 200;
