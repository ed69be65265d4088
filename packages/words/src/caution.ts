/** What must be said to whoever digs by a mark, in the order in which it matters. */
export const cautionCodes = [
  'not-a-utility-locate',
  'call-before-digging',
  'hand-dig',
  'bored',
  'private-lines',
  'depths-are-estimates',
  'damage',
  'sewer-gas',
  'trench-safety',
  'trees',
  'boundaries',
  'people-decide',
] as const;

export type CautionCode = (typeof cautionCodes)[number];
