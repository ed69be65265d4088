import type { QrSymbol } from '@footmark/link';
import { MODULE_MM, QUIET_MODULES } from '@footmark/link';

/** Grey values, 0 black to 255 white, row by row. */
export type Picture = { readonly width: number; readonly height: number; readonly grey: Uint8ClampedArray };

const MM_PER_INCH = 25.4;
/** Each pixel is the mean of so many by so many places in it, as a scanner's is. */
const PLACES = 4;
/** White paper about the symbol and its margin, mm. */
const PAPER_MM = 6;

/** A symbol on white paper as a print or a picture of it: `dpi` pixels to the inch, turned clockwise by `turn` (rad) about its middle. */
export function printed(symbol: QrSymbol, { dpi, turn }: { dpi: number; turn: number }): Picture {
  const perMm = dpi / MM_PER_INCH;
  const sideMm = (symbol.modules.length + 2 * QUIET_MODULES) * MODULE_MM + 2 * PAPER_MM;
  const size = Math.round(sideMm * perMm);
  const [sin, cos] = [Math.sin(turn), Math.cos(turn)];
  const dark = (x: number, y: number): boolean => {
    const [u, v] = [x * cos + y * sin, y * cos - x * sin];
    const half = symbol.modules.length / 2;
    return symbol.modules[Math.floor(v / MODULE_MM + half)]?.[Math.floor(u / MODULE_MM + half)] ?? false;
  };
  const grey = new Uint8ClampedArray(size * size);
  for (let row = 0; row < size; row++) {
    for (let column = 0; column < size; column++) {
      let white = 0;
      for (let i = 0; i < PLACES * PLACES; i++) {
        const x = (column + ((i % PLACES) + 0.5) / PLACES - size / 2) / perMm;
        const y = (row + (Math.floor(i / PLACES) + 0.5) / PLACES - size / 2) / perMm;
        if (!dark(x, y)) white += 1;
      }
      grey[row * size + column] = (255 * white) / PLACES ** 2;
    }
  }
  return { width: size, height: size, grey };
}

/** Out of focus: each pixel the mean of those about it, weighted by a bell of this standard deviation, pixels. */
export function blurred({ width, height, grey }: Picture, sigma: number): Picture {
  const reach = Math.ceil(3 * sigma);
  const bell = Array.from({ length: 2 * reach + 1 }, (_, i) =>
    Math.exp(-((i - reach) ** 2) / (2 * sigma ** 2)),
  );
  const sum = bell.reduce((a, b) => a + b, 0);
  const along = (from: ArrayLike<number>, step: (row: number, column: number, by: number) => number) => {
    const to = new Float64Array(from.length);
    for (let row = 0; row < height; row++) {
      for (let column = 0; column < width; column++) {
        let value = 0;
        bell.forEach((weight, i) => {
          value += weight * (from[step(row, column, i - reach)] ?? 255);
        });
        to[row * width + column] = value / sum;
      }
    }
    return to;
  };
  const within = (i: number, size: number) => Math.min(size - 1, Math.max(0, i));
  const across = along(grey, (row, column, by) => row * width + within(column + by, width));
  const both = along(across, (row, column, by) => within(row + by, height) * width + column);
  return { width, height, grey: Uint8ClampedArray.from(both) };
}

/** The same picture as the bytes of a PGM file (Netpbm, binary grey map), which most image programs read. */
export function pgm({ width, height, grey }: Picture): Uint8Array {
  return Buffer.concat([Buffer.from(`P5\n${width} ${height}\n255\n`), Buffer.from(grey)]);
}
