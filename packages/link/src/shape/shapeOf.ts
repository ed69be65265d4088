import type { z } from 'zod';
import type { Listed, Shape, ShapeKey, ShapeNode } from './shape';

type Schema = z.core.$ZodType;

/**
 * The shape of a zod schema: the same for schemas that differ only in limits and in how they are put together. Strict objects,
 * discriminated unions, arrays, records, enums, literals and scalars, each optional, nullable or with a default. A kind of schema
 * that no document needs so far, a transform or one that contains itself, throws a RangeError with the way to it.
 */
export function shapeOf(schema: Schema): Shape {
  const nodes: ShapeNode[] = [];
  const known = new Map<string, number>();
  const open = new Set<Schema>();

  const add = (node: ShapeNode): number => {
    const text = JSON.stringify(node);
    const index = known.get(text) ?? nodes.push(node) - 1;
    known.set(text, index);
    return index;
  };

  const keysOf = (properties: Readonly<Record<string, Schema>>, at: string): ShapeKey[] =>
    Object.entries(properties).map(([name, inner]) => [
      name,
      walk(inner, `${at}.${name}`),
      mayBeAbsent(inner) ? 1 : 0,
    ]);

  const walk = (given: Schema, at: string): number => {
    const one = plain(given);
    if (open.has(one)) throw new RangeError(`${at} contains itself`);
    open.add(one);
    const node = add(nodeOf(one, at));
    open.delete(one);
    return node;
  };

  const nodeOf = (one: Schema, at: string): ShapeNode => {
    const { def } = (one as z.core.$ZodTypes)._zod; // every schema is one of these; the general type hides its definition
    switch (def.type) {
      case 'object':
        return { is: 'object', keys: keysOf(def.shape, at) };
      case 'record': {
        const names = plain(def.keyType as Schema); // a record's keys are schemas like others
        const { def: key } = (names as z.core.$ZodTypes)._zod; // as above
        if (key.type !== 'enum') return { is: 'record', of: walk(def.valueType, at) };
        const value = walk(def.valueType, at);
        return { is: 'object', keys: Object.values(key.entries).map((name) => [String(name), value, 1]) };
      }
      case 'union':
        return unionOf(def, at);
      case 'array':
        return { is: 'list', of: walk(def.element, `${at}[]`) };
      case 'nullable':
        return { is: 'or-null', of: walk(def.innerType, at) };
      case 'enum':
        return { is: 'one-of', values: Object.values(def.entries) };
      case 'literal':
        return { is: 'one-of', values: def.values.map((value) => listed(value, at)) };
      case 'boolean':
        return { is: 'flag' };
      case 'number':
        return { is: 'number' };
      case 'string': {
        const format = 'format' in def ? def.format : undefined;
        return { is: format === 'date' ? 'day' : format === 'datetime' ? 'instant' : 'text' };
      }
      default:
        throw new RangeError(`${at}: no coding for a schema of type ${def.type}`);
    }
  };

  const unionOf = (def: z.core.$ZodUnionDef, at: string): ShapeNode => {
    if (!('discriminator' in def))
      throw new RangeError(`${at}: no coding for a union without a discriminator`);
    const tag = String(def.discriminator);
    const options = def.options.map((option) => {
      const inner = (plain(option) as z.core.$ZodTypes)._zod.def; // as above
      if (inner.type !== 'object') throw new RangeError(`${at}: an option that is no object`);
      const { [tag]: own, ...others } = inner.shape;
      const node = own === undefined ? undefined : nodeOf(plain(own), `${at}.${tag}`);
      if (node?.is !== 'one-of') throw new RangeError(`${at}.${tag}: lists no values`);
      return { tags: node.values, keys: keysOf(others, `${at}(${String(node.values[0])})`) };
    });
    return { is: 'union', tag, options };
  };

  walk(schema, 'document');
  return nodes;
}

/** A schema without what says only that it may be absent or stays as it is. */
function plain(schema: Schema): Schema {
  const { def } = (schema as z.core.$ZodTypes)._zod; // as above
  switch (def.type) {
    case 'optional':
    case 'default':
    case 'prefault':
    case 'nonoptional':
    case 'readonly':
      return plain(def.innerType);
    default:
      return schema;
  }
}

/** Whether a property may be left out of what is read. */
function mayBeAbsent(schema: Schema): boolean {
  return schema._zod.optin !== undefined; // optional, or with a default
}

function listed(value: unknown, at: string): Listed {
  if (value === null || typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean')
    return value;
  throw new RangeError(`${at}: no coding for the literal ${String(value)}`);
}
