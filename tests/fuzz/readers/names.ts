/** The readers of files and links, by the file beside this one that puts inputs before each, in the order of the report. */
export const readersOfFiles = ['siteFile', 'link', 'bundle', 'geoJson', 'kml', 'dxf', 'pointTable'] as const;

/** Readers of what comes some other way: pasted, sent back by a crew, or written by another device of the team. */
export const otherReaders = ['readingTable', 'crewAnswer', 'teamDocument'] as const;
