/** A whole number from 0 below 2³², seven bits to a byte, lowest first; the eighth says that more follows. */
export function varint(value: number): number[] {
  const bytes: number[] = [];
  let rest = value;
  for (; rest >= 128; rest = Math.floor(rest / 128)) bytes.push((rest % 128) + 128);
  return [...bytes, rest];
}

const MOST_BYTES = 5;

/** The number that begins at a place, and the place after it; null where none ends within five bytes. */
export function readVarint(bytes: Uint8Array, from: number): { value: number; next: number } | null {
  let value = 0;
  for (let i = 0; i < MOST_BYTES; i++) {
    const byte = bytes[from + i];
    if (byte === undefined) return null;
    value += (byte % 128) * 128 ** i;
    if (byte < 128) return { value, next: from + i + 1 };
  }
  return null;
}
