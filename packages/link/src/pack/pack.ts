import { BitLearner } from '../coder/bitLearner';
import { BitModel } from '../coder/bitModel';
import { BitReader } from '../coder/bitReader';
import { BitWriter } from '../coder/bitWriter';
import type { Shape } from '../shape/shape';
import { codeColumn } from './codeColumn';
import { codeLiteral } from './literalText';
import { TextTable, type Walk } from './walk';

/** What a packed document may unpack to: decisions of the coding (some ten for a number, eight for a letter), and items of all lists. */
export type PackLimits = { readonly mostBits: number; readonly mostItems: number };

export type Unpacked =
  | { readonly ok: true; readonly value: unknown }
  /** The bytes end too soon, lead to what the shape has no place for, or unpack to more than the limits allow. */
  | { readonly ok: false };

/**
 * A value that fits the shape, in few bytes; null for one that the same limits would not let unpack. A property that is there but undefined
 * counts as absent. Throws for a value that does not fit.
 */
export function pack(shape: Shape, value: unknown, limits: PackLimits): Uint8Array | null {
  const coder = new BitWriter(modelFor(shape), limits.mostBits);
  const walk: Walk = { coder, shape, texts: new TextTable(), itemsLeft: limits.mostItems };
  codeColumn(walk, shape.length - 1, 0, 1, [value]);
  return coder.failed ? null : coder.finish();
}

/** What was packed by the same shape. Whatever the bytes are, it ends within the limits; its answer is to be validated. */
export function unpack(shape: Shape, bytes: Uint8Array, limits: PackLimits): Unpacked {
  const coder = new BitReader(modelFor(shape), bytes, limits.mostBits);
  const walk: Walk = { coder, shape, texts: new TextTable(), itemsLeft: limits.mostItems };
  const [value] = codeColumn(walk, shape.length - 1, 0, 1, null);
  return coder.failed ? { ok: false } : { ok: true, value };
}

const models = new WeakMap<Shape, BitModel>();

/** A model that knows the words in which the shape lists its values: what people call a thing is often what it is. */
function modelFor(shape: Shape): BitModel {
  const known = models.get(shape) ?? new BitModel();
  if (!models.has(shape)) {
    const learner = new BitLearner(known);
    for (const word of wordsOf(shape)) codeLiteral(learner, word);
    models.set(shape, known);
  }
  return new BitModel(known);
}

function wordsOf(shape: Shape): readonly string[] {
  const listed = shape.flatMap((node) => {
    if (node.is === 'one-of') return node.values;
    return node.is === 'union' ? node.options.flatMap((option) => option.tags) : [];
  });
  const plain = listed.filter((value) => typeof value === 'string' && /^[a-z-]+$/.test(value));
  return [...new Set(plain)].map((word) => String(word).replaceAll('-', ' '));
}
