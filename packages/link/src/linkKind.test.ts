import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { openFrame } from './frame/frame';
import { decode, encode, type LinkKind, liveShape } from './linkKind';
import { linkLimits } from './linkLimits';
import { shapeText } from './shape/shapeText';

const before = {
  number: 5,
  version: 1,
  schema: z.strictObject({ seen: z.array(z.enum(['roots', 'crack'])), note: z.string() }),
  shapes: {},
} satisfies LinkKind;

/** The next version: a value before the others, and a property that is new. */
const after = {
  ...before,
  version: 2,
  schema: z.strictObject({
    depth: z.number().optional(),
    seen: z.array(z.enum(['sag', 'crack', 'roots'])),
    note: z.string(),
  }),
  shapes: { 1: shapeText(liveShape(before)) },
} satisfies LinkKind;

const value = { seen: ['roots', 'crack', 'roots'], note: 'wet' };

function sent(by: LinkKind, given: unknown, to: LinkKind) {
  const encoded = encode(by, given);
  if (!encoded.ok) throw new Error(encoded.failure.code);
  const opened = openFrame(encoded.bytes);
  if (!opened.ok) throw new Error(opened.failure.code);
  return decode(to, opened.frame, linkLimits);
}

describe('a link of an older version', () => {
  it('is read by the shape of that version, whatever came since', () => {
    expect(sent(before, value, after)).toEqual({ ok: true, value, version: 1 });
    expect(sent(after, { ...value, depth: 2 }, after)).toEqual({
      ok: true,
      value: { ...value, depth: 2 },
      version: 2,
    });
  });

  it('is refused where that shape was not kept, or another was made by the same version', () => {
    const refused = { ok: false, failure: { code: 'other-shape', version: 1 } };
    expect(sent(before, value, { ...after, shapes: {} })).toEqual(refused);
    const other = { ...before, schema: z.strictObject({ note: z.string(), seen: z.array(z.string()) }) };
    expect(sent(other, value, after)).toEqual(refused);
    expect(sent(other, value, before)).toEqual(refused);
  });

  it('is told from one of a newer version', () => {
    expect(sent(after, value, before)).toEqual({
      ok: false,
      failure: { code: 'newer-version', version: 2, known: 1 },
    });
  });
});
