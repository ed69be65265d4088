/**
 * Bytes as decimal digits, block by block: a QR symbol packs three digits into ten bits, so that its numeric mode holds them with a loss of
 * half a per cent, and letters of any kind with a quarter and more. 44 bytes are 352 bits, and 10¹⁰⁶ is just above 2³⁵².
 */
const BLOCK_BYTES = 44;
const BLOCK_DIGITS = 106;

/** Digits that hold every number of so many bytes. */
function digitsFor(bytes: number): number {
  return Math.ceil(bytes * Math.log10(256));
}

/** Bytes that so many digits stand for; null for a number of digits that no bytes have. */
function bytesIn(digits: number): number | null {
  const bytes = Math.floor(digits / Math.log10(256));
  return digitsFor(bytes) === digits ? bytes : null;
}

/** How many digits so many bytes have. */
export function decimalsLength(bytes: number): number {
  return Math.floor(bytes / BLOCK_BYTES) * BLOCK_DIGITS + digitsFor(bytes % BLOCK_BYTES);
}

export function decimals(bytes: Uint8Array): string {
  let text = '';
  for (let i = 0; i < bytes.length; i += BLOCK_BYTES) {
    const block = bytes.subarray(i, i + BLOCK_BYTES);
    let value = 0n;
    for (const byte of block) value = value * 256n + BigInt(byte);
    text += value.toString().padStart(digitsFor(block.length), '0');
  }
  return text;
}

/** The bytes of such a text; null for any other. */
export function bytesOfDecimals(text: string): Uint8Array | null {
  if (!/^\d*$/.test(text)) return null;
  const bytes: number[] = [];
  for (let i = 0; i < text.length; i += BLOCK_DIGITS) {
    const digits = text.slice(i, i + BLOCK_DIGITS);
    const length = bytesIn(digits.length);
    if (length === null) return null;
    let value = BigInt(digits);
    const block = new Array<number>(length).fill(0);
    for (let k = length - 1; k >= 0; k--) {
      block[k] = Number(value % 256n);
      value /= 256n;
    }
    if (value > 0n) return null;
    bytes.push(...block);
  }
  return Uint8Array.from(bytes);
}
