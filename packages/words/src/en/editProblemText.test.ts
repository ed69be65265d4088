import { type EditProblem, siteJsonSchema } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { en } from './en';

const feet = { length: 'ft-in', diameter: 'in', direction: 'bearing' } as const;
const metric = { length: 'm', diameter: 'mm', direction: 'azimuth' } as const;

function most(path: readonly (string | number)[], limit: number, inclusive = true): EditProblem {
  return { code: 'too-great', path, limit, inclusive };
}

describe('editProblemText', () => {
  it.each<[EditProblem, string, string]>([
    [
      most(['paths', 0, 'vertices', 1, 'bendRadius'], 10),
      'Not done: the bend radius can be at most 32′ 9¾″.',
      'Not done: the bend radius can be at most 10.0 m.',
    ],
    [
      most(['paths', 0, 'stretches', 1, 'diameter'], 5),
      'Not done: the diameter can be at most 196⅞″.',
      'Not done: the diameter can be at most 5000 mm.',
    ],
    [
      most(['features', 0, 'vertices', 0, 'spot', 'x'], 1e6),
      'Not done: the distance from the origin can be at most 621 miles.',
      'Not done: the distance from the origin can be at most 1,000 km.',
    ],
    [
      most(['features', 0, 'fields', 'stemDiameters', 3], 100),
      'Not done: the diameter of a stem can be at most 3937″.',
      'Not done: the diameter of a stem can be at most 100000 mm.',
    ],
    [
      { code: 'too-small', path: ['features', 0, 'closing', 'distance'], limit: 0, inclusive: false },
      'Not done: the distance must be more than zero.',
      'Not done: the distance must be more than zero.',
    ],
    [
      most(['features', 0, 'vertices', 2, 'spot', 'sweep'], 2 * Math.PI, false),
      'Not done: the angle of the curve must be less than 360°.',
      'Not done: the angle of the curve must be less than 360°.',
    ],
    [
      most(['paths', 0, 'stretches', 0, 'slope'], 2),
      'Not done: the slope can be at most 200.00 %.',
      'Not done: the slope can be at most 200.00 %.',
    ],
    [
      { code: 'too-small', path: ['sigmas', 'counter'], limit: 0, inclusive: false },
      'Not done: the give or take of “One reading of the counter” must be more than zero.',
      'Not done: the give or take of “One reading of the counter” must be more than zero.',
    ],
    [
      most(['sigmas', 'knownLength'], 1000),
      'Not done: the give or take of “Known length of pipe” can be at most 3280′ 10″.',
      'Not done: the give or take of “Known length of pipe” can be at most 1000.0 m.',
    ],
    [
      { code: 'too-many', path: ['paths'], limit: 500 },
      'Not done: there can be at most 500 pipes.',
      'Not done: there can be at most 500 pipes.',
    ],
    [
      { code: 'too-long', path: ['runs', 0, 'note'], limit: 5000 },
      'Not done: a note can be at most 5,000 characters long.',
      'Not done: a note can be at most 5,000 characters long.',
    ],
    [
      { code: 'wrong-value', path: ['features', 0, 'fields', 'photo'] },
      'Not done: “Photo” is not a value that a site can hold.',
      'Not done: “Photo” is not a value that a site can hold.',
    ],
    [
      { code: 'depends-on-itself', path: [], name: 'a/b' },
      'Not done: a point would then be measured, by way of others, from itself. Measure it from another point.',
      'Not done: a point would then be measured, by way of others, from itself. Measure it from another point.',
    ],
  ])('%j', (problem, inFeet, inMetres) => {
    expect(en.editProblemText(problem, feet)).toBe(inFeet);
    expect(en.editProblemText(problem, metric)).toBe(inMetres);
  });

  it('has a name for every number, list and text with a limit that the site file has', () => {
    const limited = [...limitsIn(siteJsonSchema())];
    expect(limited.length).toBeGreaterThan(40);
    for (const problem of limited) {
      const text = en.editProblemText(problem, feet);
      expect(text, JSON.stringify(problem)).not.toMatch(/: this |of these|undefined|NaN/);
    }
  });
});

type Schema = {
  readonly maximum?: number;
  readonly exclusiveMaximum?: number;
  readonly maxItems?: number;
  readonly minItems?: number;
  readonly maxLength?: number;
  /** Only ids have one beside a length, and nobody types those. */
  readonly pattern?: string;
  readonly items?: Schema;
  readonly anyOf?: readonly Schema[];
  readonly oneOf?: readonly Schema[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly $defs?: Readonly<Record<string, Schema>>;
};

/** A problem for each limit in a JSON Schema, its path the name of the property. */
function* limitsIn(schema: Schema, property = ''): Generator<EditProblem> {
  const path = [property];
  const { maximum = Infinity, exclusiveMaximum, maxItems, minItems, maxLength, pattern } = schema;
  if (property !== '') {
    if (maximum < Number.MAX_SAFE_INTEGER) yield { code: 'too-great', path, limit: maximum, inclusive: true };
    if (exclusiveMaximum !== undefined) {
      yield { code: 'too-great', path, limit: exclusiveMaximum, inclusive: false };
    }
    if (maxItems !== undefined) yield { code: 'too-many', path, limit: maxItems };
    if (minItems !== undefined) yield { code: 'too-few', path, limit: minItems };
    if (maxLength !== undefined && pattern === undefined) yield { code: 'too-long', path, limit: maxLength };
  }
  for (const [name, inner] of Object.entries(schema.properties ?? {})) yield* limitsIn(inner, name);
  for (const inner of Object.values(schema.$defs ?? {})) yield* limitsIn(inner);
  for (const inner of [schema.items ?? [], schema.anyOf ?? [], schema.oneOf ?? []].flat()) {
    yield* limitsIn(inner, property);
  }
}
