import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { z } from 'zod';
import { linkLimits } from '../linkLimits';
import { shapeOf } from '../shape/shapeOf';
import { pack, unpack } from './pack';

/** Every kind of schema that a document may have. */
const schema = z.strictObject({
  name: z.string(),
  day: z.iso.date().optional(),
  at: z.iso.datetime().nullable(),
  sizes: z.array(z.number()),
  flags: z.array(z.boolean()).default([]),
  hour: z.literal([1, 2, 3, null, 'noon', false]),
  notes: z.record(z.string(), z.array(z.string())),
  some: z.partialRecord(z.enum(['a', 'b']), z.number().nullable()),
  things: z.array(
    z.discriminatedUnion('is', [
      z.strictObject({ is: z.literal('point'), x: z.number(), id: z.string() }),
      z.strictObject({
        is: z.enum(['line', 'area']),
        x: z.number(),
        to: z.string().optional(),
        id: z.string(),
      }),
      z.strictObject({ is: z.literal('none') }),
    ]),
  ),
});
const shape = shapeOf(schema);

const text = fc.oneof(
  fc.string({ unit: 'binary' }),
  fc.array(fc.integer({ min: 0, max: 0xffff })).map((units) => String.fromCharCode(...units)), // also lone halves of pairs
  fc.constantFrom('f9', 'f10', 'f11', 'a', 'b', 'z', '', 'm0123456789ab', '2026-04-14'),
);
const number = fc.oneof(
  fc.double({ noNaN: true }),
  fc.constantFrom(0, -0, 1, 15.24, 0.1 + 0.2, Number.MAX_SAFE_INTEGER, 2 ** 48, -(2 ** 48), Number.MIN_VALUE),
  fc.integer({ min: -5000, max: 5000 }).map((n) => (n / 16) * 0.0254),
);
const moment = fc.oneof(
  text,
  fc.date({ noInvalidDate: true }).map((d) => d.toISOString()),
  fc.date({ noInvalidDate: true }).map((d) => d.toISOString().slice(0, 10)),
  fc.date({ noInvalidDate: true }).map((d) => d.toISOString().replace(/\.\d+/, '')),
);
const value = fc.record(
  {
    name: text,
    day: moment,
    at: fc.option(moment),
    sizes: fc.array(number),
    flags: fc.array(fc.boolean()),
    hour: fc.constantFrom(1, 2, 3, null, 'noon', false),
    notes: fc.dictionary(text, fc.array(text)),
    some: fc.record({ a: fc.option(number), b: fc.option(number) }, { requiredKeys: [] }),
    things: fc.array(
      fc.oneof(
        fc.record({ is: fc.constant('point'), x: number, id: text }),
        fc.record(
          { is: fc.constantFrom('line', 'area'), x: number, to: text, id: text },
          { requiredKeys: ['is', 'x', 'id'] },
        ),
        fc.constant({ is: 'none' }),
      ),
    ),
  },
  { requiredKeys: ['name', 'at', 'sizes', 'hour', 'notes', 'some', 'things'] },
);

/** Milliseconds: some ten times what it takes, for a machine that is busy. */
vi.setConfig({ testTimeout: 60_000 });

describe('a packed value', () => {
  it('comes back bit for bit, whatever it holds', () => {
    fc.assert(
      fc.property(value, (given) => {
        const bytes = pack(shape, given, linkLimits);
        expect(bytes).not.toBeNull();
        const back = unpack(shape, bytes ?? new Uint8Array(), linkLimits);
        expect(back).toStrictEqual({ ok: true, value: structuredClone(given) }); // tells −0 from 0, and absent from undefined
      }),
      { numRuns: 120 },
    );
  });

  it('takes a property that is undefined for one that is not there', () => {
    const optional = shapeOf(z.strictObject({ a: z.number().optional() }));
    const bytes = pack(optional, { a: undefined }, linkLimits) ?? new Uint8Array();
    expect(unpack(optional, bytes, linkLimits)).toStrictEqual({ ok: true, value: {} });
  });

  it('ends on any bytes, without a throw', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        expect(typeof unpack(shape, bytes, { mostBits: 20_000, mostItems: 1000 }).ok).toBe('boolean');
      }),
      { numRuns: 200 },
    );
  });

  it('is refused by the writer when the reader would refuse it', () => {
    const given = { name: '', at: null, hour: 1, notes: {}, some: {}, things: [], sizes: [1, 2, 3, 4] };
    expect(pack(shape, given, { mostBits: 1e6, mostItems: 4 })).not.toBeNull();
    expect(pack(shape, given, { mostBits: 1e6, mostItems: 3 })).toBeNull();
    expect(pack(shape, given, { mostBits: 50, mostItems: 1000 })).toBeNull();
  });

  it('is not made of a value that the shape has no room for', () => {
    const given = { name: '', at: null, hour: 4, notes: {}, some: {}, things: [], sizes: [] };
    expect(() => pack(shape, given, linkLimits)).toThrow(RangeError);
  });
});
