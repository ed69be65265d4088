import { create } from 'zustand';
import { loadFile } from '../storage/fileStore';
import { scaledSize } from './scaledSize';

/** Longer side of the reduced copy that is painted while the whole picture is small on the screen. */
const REDUCED_LONGEST_PX = 1024;

/** A picture that is ready to be painted, or why it never will be. */
export type PictureImage =
  | { readonly is: 'ready'; readonly whole: ImageBitmap; readonly reduced: ImageBitmap }
  | { readonly is: 'missing' }
  | { readonly is: 'broken' };

const images = new Map<string, PictureImage | 'coming'>();

/** Counts the pictures that have arrived: who paints them paints anew with each. */
export const useArrivedPictures = create<{ readonly count: number }>()(() => ({ count: 0 }));

/** The picture of a file id; null while it is being fetched and decoded, which the first call begins. */
export function pictureImage(file: string): PictureImage | null {
  const known = images.get(file);
  if (known === 'coming') return null;
  if (known !== undefined) return known;
  images.set(file, 'coming');
  void decoded(file).then((image) => {
    if (images.get(file) !== 'coming') {
      release(image); // the site was left meanwhile
      return;
    }
    images.set(file, image);
    useArrivedPictures.setState(({ count }) => ({ count: count + 1 }));
  });
  return null;
}

/** Gives back the memory of all pictures. */
export function forgetPictures(): void {
  for (const image of images.values()) if (image !== 'coming') release(image);
  images.clear();
}

async function decoded(file: string): Promise<PictureImage> {
  try {
    const stored = await loadFile(file);
    if (stored === null) return { is: 'missing' };
    const whole = await createImageBitmap(stored.blob, { imageOrientation: 'from-image' });
    const { widthPx, heightPx } = scaledSize(
      { widthPx: whole.width, heightPx: whole.height },
      REDUCED_LONGEST_PX,
    );
    const reduced =
      widthPx === whole.width
        ? whole
        : await createImageBitmap(whole, {
            resizeWidth: widthPx,
            resizeHeight: heightPx,
            resizeQuality: 'high',
          });
    return { is: 'ready', whole, reduced };
  } catch {
    return { is: 'broken' };
  }
}

function release(image: PictureImage): void {
  if (image.is !== 'ready') return;
  image.whole.close();
  image.reduced.close();
}
