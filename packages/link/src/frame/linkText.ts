import { base64url, bytesOfBase64url } from './base64url';
import { bytesOfDecimals } from './decimals';

/** What people's programs put after a link that ends a sentence. */
const AFTER_A_LINK = /[\s.,;:!?)>\]'"’”]/;

/** The text of a frame in a URL, behind its `#`. */
export function linkText(frame: Uint8Array): string {
  return base64url(frame);
}

/**
 * The bytes in a link: its last part behind `#`, `/` or `=`, or the text itself. A frame's first byte is its coding, which never begins
 * with a digit in letters, so that digits mean decimals. Null for what cannot be such a text.
 */
export function bytesOfLink(link: string): Uint8Array | null {
  const text = withoutEnd(link).trimStart().split(/[#/=]/).at(-1) ?? '';
  if (text === '') return null;
  return /^\d/.test(text) ? bytesOfDecimals(text) : bytesOfBase64url(text);
}

/** Sought from the end: a pattern that is tried at every place takes minutes over a long text of blanks. */
function withoutEnd(link: string): string {
  let end = link.length;
  while (end > 0 && AFTER_A_LINK.test(link.charAt(end - 1))) end -= 1;
  return link.slice(0, end);
}
