import type { BitCoder } from '../coder/bitCoder';
import { mix } from '../coder/bitModel';
import type { Shape } from '../shape/shape';

/** What goes along on the way through a document, written or read. */
export type Walk = {
  readonly coder: BitCoder;
  readonly shape: Shape;
  /** Every text that came by, in order of first use. */
  readonly texts: TextTable;
  /** How many more items its lists may have together. */
  itemsLeft: number;
};

/**
 * The values that stand at one place in all records of a kind, one after the other. Written they are `given`; to be read they are not,
 * and there are `count` of them. Gives the values that stand there.
 */
export type Column<Value> = (
  walk: Walk,
  context: number,
  count: number,
  given: readonly Value[] | null,
) => Value[];

/** Texts by their place and back. */
export class TextTable {
  readonly #texts: string[] = [];
  readonly #places = new Map<string, number>();

  placeOf(text: string): number | undefined {
    return this.#places.get(text);
  }

  at(place: number): string | undefined {
    return this.#texts[place];
  }

  add(text: string): void {
    if (this.#places.has(text)) return;
    this.#places.set(text, this.#texts.push(text) - 1);
  }
}

/** The context of a property: that of the record, and its name. */
export function inside(context: number, name: string): number {
  let inner = mix(context, name.length);
  for (let i = 0; i < name.length; i++) inner = mix(inner, name.charCodeAt(i));
  return inner;
}
