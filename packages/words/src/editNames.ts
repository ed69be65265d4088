import type { EditProblem, SigmaName } from '@footmark/site';
import type { FieldName } from './codes';
import { type EditNumber, isEditNumber, propertyOf, sigmaOf } from './editNumbers';

/** What a language calls the values of a site, by their properties. */
export type EditNames = {
  readonly numbers: Readonly<Record<EditNumber, string>>;
  readonly texts: Readonly<Record<string, string>>;
  readonly fields: Readonly<Record<FieldName, string>>;
  /** What a standard deviation is of. */
  readonly sigma: (name: SigmaName) => string;
  /** What has no name. */
  readonly other: string;
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
  if (texts[property] !== undefined) return texts[property];
  const label = Object.entries(fields).find(([name]) => name === property)?.[1];
  return label === undefined ? other : `“${label}”`;
}
