/** How each property of a value is computed. */
export type Lazy<Value extends object> = { readonly [Name in keyof Value]: () => Value[Name] };

/** A value whose properties are computed when they are first read, and then kept. */
export function lazily<Value extends object>(parts: Lazy<Value>): Value {
  const value = {};
  for (const name of Object.keys(parts) as (keyof Value)[]) {
    // the keys of its own object
    let kept: { readonly is: Value[keyof Value] } | null = null;
    Object.defineProperty(value, name, {
      enumerable: true,
      get: () => {
        kept ??= { is: parts[name]() };
        return kept.is;
      },
    });
  }
  return value as Value; // every property of it was defined above
}
