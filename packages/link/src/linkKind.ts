import type { z } from 'zod';
import { type Frame, frameBytes } from './frame/frame';
import { linkText } from './frame/linkText';
import { readVarint, varint } from './frame/varint';
import { type LinkLimits, linkLimits } from './linkLimits';
import { pack, unpack } from './pack/pack';
import type { Shape } from './shape/shape';
import { shapeOf } from './shape/shapeOf';
import { shapeMark, shapeOfText } from './shape/shapeText';

/** A kind of document that goes into links. */
export type LinkKind = {
  /** Its number in a link, 1 to 255; 0 is for one of several links. Never given to another kind. */
  readonly number: number;
  /** The version of its schema, 1 and up. */
  readonly version: number;
  readonly schema: z.core.$ZodType;
  /** By version the frozen text of its shape, see `shapeText`. Versions without one cannot be opened any more. */
  readonly shapes: Readonly<Record<number, string>>;
};

export type KindFailure =
  | { readonly code: 'newer-version'; readonly version: number; readonly known: number }
  /** By its number an older or the same version, but not of a shape that was ever given out. */
  | { readonly code: 'other-shape'; readonly version: number }
  /** It unpacks to more than the limits allow, or to nothing that fits. */
  | { readonly code: 'not-unpacked' };

/** The bytes of a link, or that there would be more of them than a link may have: a file is the way. */
export type Encoded =
  | { readonly ok: true; readonly bytes: Uint8Array }
  | { readonly ok: false; readonly failure: { readonly code: 'too-large' } };

const TOO_LARGE: Encoded = { ok: false, failure: { code: 'too-large' } };

const SHAPE_BYTES = 2;

const liveShapes = new WeakMap<z.core.$ZodType, Shape>();

/** The shape of a kind's schema as this program has it. */
export function liveShape({ schema }: LinkKind): Shape {
  const shape = liveShapes.get(schema) ?? shapeOf(schema);
  liveShapes.set(schema, shape);
  return shape;
}

/** A frame of this kind's document: the version, a mark of the shape, the packed value. Throws for one that does not fit the schema. */
export function encode(kind: LinkKind, value: unknown, limits: LinkLimits = linkLimits): Encoded {
  const shape = liveShape(kind);
  const packed = pack(shape, value, limits);
  if (packed === null) return TOO_LARGE;
  const mark = shapeMark(shape);
  const body = Uint8Array.from([...varint(kind.version), mark >> 8, mark & 255, ...packed]);
  const bytes = frameBytes({ kind: kind.number, body });
  return linkText(bytes).length > limits.mostCharacters ? TOO_LARGE : { ok: true, bytes };
}

/**
 * The document in a frame of this kind, as it was packed: of `version`, by the shape of that version, neither migrated nor validated.
 */
export function decode(
  kind: LinkKind,
  { body }: Frame,
  limits: LinkLimits,
):
  | { readonly ok: true; readonly value: unknown; readonly version: number }
  | { readonly ok: false; readonly failure: KindFailure } {
  const read = readVarint(body, 0);
  if (read === null) return { ok: false, failure: { code: 'not-unpacked' } };
  const { value: version, next } = read;
  if (version > kind.version) {
    return { ok: false, failure: { code: 'newer-version', version, known: kind.version } };
  }
  const shape = shapeOfVersion(kind, version);
  const mark = (body[next] ?? 0) * 256 + (body[next + 1] ?? 0);
  if (shape === null || shapeMark(shape) !== mark) {
    return { ok: false, failure: { code: 'other-shape', version } };
  }
  const unpacked = unpack(shape, body.subarray(next + SHAPE_BYTES), limits);
  if (!unpacked.ok) return { ok: false, failure: { code: 'not-unpacked' } };
  return { ok: true, value: unpacked.value, version };
}

function shapeOfVersion(kind: LinkKind, version: number): Shape | null {
  if (version === kind.version) return liveShape(kind);
  const text = kind.shapes[version];
  return text === undefined ? null : shapeOfText(text);
}
