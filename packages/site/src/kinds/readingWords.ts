// What can be said of a reading or a run in one word. A new word is one entry here and its name in each language's folder.
// Common practice, no source; no coding scheme.

/** How bad something is. */
export const severityIds = ['slight', 'moderate', 'severe'] as const;
export type SeverityWord = (typeof severityIds)[number];

/** What is advised to be done about it. */
export const actionIds = [
  'watch',
  'clean-and-look-again',
  'spot-repair',
  'line',
  'replace',
  'reroute',
] as const;
export type ActionWord = (typeof actionIds)[number];

/** Why the camera went no further. */
export const runEndIds = [
  'reached-end',
  'could-not-pass',
  'cable-out',
  'under-water',
  'seen-enough',
  'equipment',
] as const;
export type RunEnd = (typeof runEndIds)[number];

/** What a visit was for. */
export const visitPurposeIds = ['first-look', 'after-cleaning', 'after-repair', 'other'] as const;
export type VisitPurpose = (typeof visitPurposeIds)[number];
