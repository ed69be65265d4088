import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { shapeOf } from './shapeOf';
import { shapeMark, shapeOfText, shapeText } from './shapeText';

const mark = (schema: z.ZodType) => shapeMark(shapeOf(schema));

describe('a shape', () => {
  it('is the same for schemas that differ in limits and in how they are put together', () => {
    const id = z.string().min(1).regex(/^a/);
    const one = z.strictObject({ a: id, b: z.array(z.number().max(3)).min(1), c: id.optional() });
    const other = z.strictObject({
      a: z.string(),
      b: z.array(z.number().int()).readonly(),
      c: z.string().max(9).optional(),
    });
    expect(shapeOf(one)).toEqual(shapeOf(other));
  });

  it.each<readonly [string, z.ZodType, z.ZodType]>([
    ['a value more', z.enum(['a', 'b']), z.enum(['a', 'b', 'c'])],
    ['values in another order', z.enum(['a', 'b']), z.enum(['b', 'a'])],
    [
      'a property more',
      z.strictObject({ a: z.number() }),
      z.strictObject({ a: z.number(), b: z.number().optional() }),
    ],
    [
      'one that may be absent',
      z.strictObject({ a: z.number() }),
      z.strictObject({ a: z.number().optional() }),
    ],
    ['one that may be null', z.strictObject({ a: z.number() }), z.strictObject({ a: z.number().nullable() })],
    ['a text for a number', z.array(z.number()), z.array(z.string())],
  ])('has another mark with %s', (_, one, other) => {
    expect(mark(one)).not.toBe(mark(other));
  });

  it('comes back from its text', () => {
    const shape = shapeOf(
      z.strictObject({ a: z.record(z.string(), z.boolean()), b: z.literal(['x', 1, null]) }),
    );
    expect(shapeOfText(shapeText(shape))).toEqual(shape);
  });

  it.each<readonly [string, z.ZodType, RegExp]>([
    [
      'a union that does not tell itself',
      z.strictObject({ a: z.union([z.string(), z.number()]) }),
      /document\.a: /,
    ],
    ['a transform', z.array(z.string().transform((s) => s.length)), /document\[\]: .*pipe/],
    ['a date', z.strictObject({ b: z.date() }), /document\.b: .*date/],
  ])('is refused of %s, with the way to it', (_, schema, message) => {
    expect(() => shapeOf(schema)).toThrow(message);
  });

  it('is refused of what contains itself', () => {
    const tree = z.strictObject({
      get branches() {
        return z.array(tree);
      },
    });
    expect(() => shapeOf(tree)).toThrow(/contains itself/);
  });
});
