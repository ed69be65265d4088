/** Kinds of picture that a bundle carries, by their media type. */
export type PictureKind = 'image/png' | 'image/jpeg' | 'image/webp' | 'image/gif';

/** First bytes: PNG (W3C, 5.2), JPEG (ITU-T T.81, SOI and a marker), GIF (87a, 89a), WebP (RFC 9649); -1 is any byte. */
const BEGINNINGS: readonly (readonly [PictureKind, readonly number[]])[] = [
  ['image/png', [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]],
  ['image/jpeg', [0xff, 0xd8, 0xff]],
  ['image/gif', [0x47, 0x49, 0x46, 0x38, 0x37, 0x61]],
  ['image/gif', [0x47, 0x49, 0x46, 0x38, 0x39, 0x61]],
  ['image/webp', [0x52, 0x49, 0x46, 0x46, -1, -1, -1, -1, 0x57, 0x45, 0x42, 0x50]],
];

/** What kind of picture bytes are by how they begin, whatever their name says; null for what is none. */
export function pictureKind(bytes: Uint8Array): PictureKind | null {
  const found = BEGINNINGS.find(([, begins]) => begins.every((byte, i) => byte < 0 || bytes[i] === byte));
  return found?.[0] ?? null;
}

export const PICTURE_EXTENSION: Readonly<Record<PictureKind, string>> = {
  'image/png': 'png',
  'image/jpeg': 'jpg',
  'image/webp': 'webp',
  'image/gif': 'gif',
};
