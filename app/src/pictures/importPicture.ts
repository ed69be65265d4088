import type { PlaceTaken } from './exif';
import { type HeaderFailure, type PictureType, readPictureHeader } from './pictureHeader';
import { MOST_BYTES } from './pictureLimits';
import { scaledSize, uprightSize } from './scaledSize';
import { useWishForPlaces } from './wishForPlaces';
import { placeTakenOf, withoutMetadata } from './withoutMetadata';

/** A picture of so many pixels or more is not decoded: four bytes each are more than a phone has to spare. */
export const MOST_PIXELS = 100_000_000;
/** Longer side that is kept of a picture under the plan: fine enough to read a plat, small enough to paint at once. */
export const UNDERLAY_LONGEST_PX = 4096;
/** Longer side that is kept of a photo. */
export const PHOTO_LONGEST_PX = 2000;

const JPEG_QUALITY = 0.9;

type SizePx = { readonly widthPx: number; readonly heightPx: number };

export type ImportedPicture = SizePx & {
  readonly ok: true;
  readonly blob: Blob;
  /** The upright size that the file had, when it was scaled down; null when the file is kept as it is. */
  readonly scaledFrom: SizePx | null;
};

export type ImportFailure =
  | HeaderFailure
  | { readonly ok: false; readonly code: 'unreadable' }
  | { readonly ok: false; readonly code: 'too-many-bytes'; readonly bytes: number }
  | ({ readonly ok: false; readonly code: 'too-many-pixels' } & SizePx)
  | ({ readonly ok: false; readonly code: 'no-memory' } & SizePx);

/**
 * Takes in a picture file: checked by its content, upright, its longer side at most `longestPx`, and without what the camera wrote beside
 * it. Where a JPEG was taken goes along only if that is wished.
 */
export async function importPicture(file: Blob, longestPx: number): Promise<ImportedPicture | ImportFailure> {
  if (file.size > MOST_BYTES) return { ok: false, code: 'too-many-bytes', bytes: file.size };
  let bytes: Uint8Array<ArrayBuffer>;
  try {
    bytes = new Uint8Array(await file.arrayBuffer());
  } catch {
    return { ok: false, code: 'unreadable' };
  }
  const header = readPictureHeader(bytes);
  if (!header.ok) return header;
  const upright = uprightSize(header, header.orientation);
  if (header.widthPx * header.heightPx >= MOST_PIXELS)
    return { ok: false, code: 'too-many-pixels', ...upright };

  const place = useWishForPlaces.getState().keeps ? placeTakenOf(bytes, header.type) : null;
  const bare = withoutMetadata(bytes, header.type, header.orientation, place);
  const blob = new Blob([bare ?? bytes], { type: `image/${header.type}` }); // what it is, not what its name says
  let bitmap: ImageBitmap;
  try {
    bitmap = await createImageBitmap(blob, { imageOrientation: 'from-image' });
  } catch {
    return { ok: false, code: 'broken', type: header.type };
  }
  try {
    const size = { widthPx: bitmap.width, heightPx: bitmap.height };
    const kept = scaledSize(size, longestPx);
    const isWhole = kept.widthPx === size.widthPx && kept.heightPx === size.heightPx;
    if (isWhole && bare !== null) return { ok: true, blob, ...size, scaledFrom: null };
    // drawn anew, a picture has nothing beside it
    const drawn = await scaledBlob(bitmap, kept, header.type);
    const scaled = drawn === null || place === null ? drawn : await withPlace(drawn, place);
    return scaled === null
      ? { ok: false, code: 'no-memory', ...size }
      : { ok: true, blob: scaled, ...kept, scaledFrom: isWhole ? null : size };
  } finally {
    bitmap.close();
  }
}

/** A JPEG that was drawn anew, and is upright, with the place where it was taken. */
async function withPlace(drawn: Blob, place: PlaceTaken): Promise<Blob> {
  const told = withoutMetadata(new Uint8Array(await drawn.arrayBuffer()), 'jpeg', 1, place);
  return told === null ? drawn : new Blob([told], { type: drawn.type });
}

/** The picture drawn anew at a size: photos as JPEG, all else as PNG. Null when the browser cannot. */
async function scaledBlob(bitmap: ImageBitmap, size: SizePx, type: PictureType): Promise<Blob | null> {
  const canvas = document.createElement('canvas');
  canvas.width = size.widthPx;
  canvas.height = size.heightPx;
  const context = canvas.getContext('2d');
  if (context === null) return null;
  context.imageSmoothingQuality = 'high';
  context.drawImage(bitmap, 0, 0, size.widthPx, size.heightPx);
  const kept = type === 'jpeg' ? 'image/jpeg' : 'image/png';
  return new Promise((done) => canvas.toBlob(done, kept, JPEG_QUALITY));
}
