type SizePx = { readonly widthPx: number; readonly heightPx: number };

/** A size in the same proportions whose longer side is at most `longestPx`; whole pixels, at least one each way. */
export function scaledSize({ widthPx, heightPx }: SizePx, longestPx: number): SizePx {
  const factor = Math.min(1, longestPx / Math.max(widthPx, heightPx));
  return {
    widthPx: Math.max(1, Math.round(widthPx * factor)),
    heightPx: Math.max(1, Math.round(heightPx * factor)),
  };
}

/** The size at which a picture stands upright: an EXIF orientation of 5 to 8 lays it on its side. */
export function uprightSize({ widthPx, heightPx }: SizePx, orientation: number): SizePx {
  return orientation >= 5 ? { widthPx: heightPx, heightPx: widthPx } : { widthPx, heightPx };
}
