import type { EditProblem, SigmaName } from '@footmark/site';
import type { FieldName } from './codes';
import { type EditNumber, isEditNumber, propertyOf, sigmaOf } from './editNumbers';

/** What a site has several of, by the property that lists them. */
export const editLists = [
  'features',
  'paths',
  'runs',
  'visits',
  'underlays',
  'control',
  'vertices',
  'stretches',
  'readings',
  'branches',
  'tapes',
  'pairs',
  'different',
  'knownLengths',
  'setAside',
  'asFound',
  'photos',
  'ties',
  'digs',
  'notes',
  'changed',
  'counters',
  'evidence',
  'drawn',
  'fitted',
  'added',
  'stemDiameters',
] as const;
export type EditList = (typeof editLists)[number];

/** Texts that people write, by their property. */
export const editTexts = [
  'name',
  'address',
  'note',
  'letter',
  'by',
  'label',
  'ticket',
  'text',
  'who',
  'why',
  'observation',
  'setAside',
] as const;
export type EditText = (typeof editTexts)[number];

/** What a language calls the values of a site, by their properties. */
export type EditNames = {
  readonly numbers: Readonly<Record<EditNumber, string>>;
  readonly texts: Readonly<Record<EditText, string>>;
  readonly lists: Readonly<Record<EditList, string>>;
  readonly fields: Readonly<Record<FieldName, string>>;
  /** What a standard deviation is of. */
  readonly sigma: (name: SigmaName) => string;
  /** What has no name. */
  readonly other: string;
  /** What there is a number of, and has no name. */
  readonly others: string;
};

/** The number that a problem is about. */
export function numberName(problem: EditProblem, names: EditNames): string {
  const sigma = sigmaOf(problem);
  if (sigma !== null) return names.sigma(sigma);
  const property = propertyOf(problem);
  return isEditNumber(property) ? names.numbers[property] : names.other;
}

/** The number or text that a problem is about. */
export function valueName(problem: EditProblem, names: EditNames): string {
  const property = propertyOf(problem);
  return isEditNumber(property) ? names.numbers[property] : textName(problem, names);
}

/** The text that a problem is about; a field of a thing by its label. */
export function textName(problem: EditProblem, { texts, fields, other }: EditNames): string {
  const property = propertyOf(problem);
  const text = editTexts.find((name) => name === property);
  if (text !== undefined) return texts[text];
  const label = Object.entries(fields).find(([name]) => name === property)?.[1];
  return label === undefined ? other : `“${label}”`;
}

/** What there are too many or too few of. */
export function listName(problem: EditProblem, { lists, others }: EditNames): string {
  const property = propertyOf(problem);
  const list = editLists.find((name) => name === property);
  return list === undefined ? others : lists[list];
}
