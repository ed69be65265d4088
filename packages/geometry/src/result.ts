export type Success<T> = Readonly<{ ok: true; value: T }>;

/**
 * A data problem: a code for the app's language tables and the numbers that its sentence needs (metres,
 * radians, indices).
 */
export type Failure<Code extends string> = Readonly<{
  ok: false;
  code: Code;
  values?: Readonly<Record<string, number>>;
}>;

export type Result<T, Code extends string> = Success<T> | Failure<Code>;

export function ok<T>(value: T): Success<T> {
  return { ok: true, value };
}

export function fail<Code extends string>(
  code: Code,
  values?: Readonly<Record<string, number>>,
): Failure<Code> {
  return values === undefined ? { ok: false, code } : { ok: false, code, values };
}
