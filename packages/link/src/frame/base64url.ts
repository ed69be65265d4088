/** RFC 4648, section 5, without padding. */
const DIGITS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';

/** Bytes as letters, digits, `-` and `_`, which a URL's fragment takes as they are: four for three bytes. */
export function base64url(bytes: Uint8Array): string {
  let text = '';
  for (let i = 0; i < bytes.length; i += 3) {
    const three = bytes.subarray(i, i + 3);
    const bits = ((three[0] ?? 0) << 16) | ((three[1] ?? 0) << 8) | (three[2] ?? 0);
    for (let k = 0; k <= three.length; k++) text += DIGITS.charAt((bits >> (18 - 6 * k)) & 63);
  }
  return text;
}

/** The bytes of such a text; null for one with other characters or of a length that none has. */
export function bytesOfBase64url(text: string): Uint8Array | null {
  if (text.length % 4 === 1) return null;
  const bytes: number[] = [];
  for (let i = 0; i < text.length; i += 4) {
    const four = text.slice(i, i + 4);
    let bits = 0;
    for (let k = 0; k < 4; k++) {
      const digit = k < four.length ? DIGITS.indexOf(four.charAt(k)) : 0;
      if (digit < 0) return null;
      bits = bits * 64 + digit;
    }
    for (let k = 0; k < four.length - 1; k++) bytes.push((bits >> (16 - 8 * k)) & 255);
  }
  return Uint8Array.from(bytes);
}
