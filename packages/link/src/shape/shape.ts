/** A value that a schema lists. */
export type Listed = string | number | boolean | null;

/** One property of a record: its name, what stands there (an index into the shape's nodes), and whether it may be absent. */
export type ShapeKey = readonly [name: string, node: number, optional: 0 | 1];

/**
 * What a coding must know of one place in a document, and nothing of its limits.
 *
 * - `object`: these keys and no others; `record`: any names, each with such a value
 * - `union`: records that tell themselves apart by what stands at `tag`; an option is what may stand there and the other keys
 * - `list`: any number of one kind; `or-null`: that kind or null
 * - `one-of`: one of the values; `flag`, `number`, `text`: as they are; `day`, `instant`: texts that are mostly `2026-04-14` and
 *   `2026-04-14T13:05:00Z`
 */
export type ShapeNode =
  | { readonly is: 'object'; readonly keys: readonly ShapeKey[] }
  | { readonly is: 'record'; readonly of: number }
  | {
      readonly is: 'union';
      readonly tag: string;
      readonly options: readonly { readonly tags: readonly Listed[]; readonly keys: readonly ShapeKey[] }[];
    }
  | { readonly is: 'list'; readonly of: number }
  | { readonly is: 'or-null'; readonly of: number }
  | { readonly is: 'one-of'; readonly values: readonly Listed[] }
  | { readonly is: 'flag' | 'number' | 'text' | 'day' | 'instant' };

/** A document's shape: nodes that name each other by index, each after those that it names; the document itself is the last. */
export type Shape = readonly ShapeNode[];

/** The node at an index. Throws for an index that the shape has not: a shape is made by `shapeOf` or frozen from one. */
export function nodeAt(shape: Shape, index: number): ShapeNode {
  const node = shape[index];
  if (node === undefined) throw new RangeError(`the shape has no node ${index}`);
  return node;
}
