// Two readers of QR symbols that we did not write, and that share nothing: zbar (Debian's zbar-tools) and ZXing's C++ library (zxing-wasm).

import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';
import { type Picture, pgm } from './qrPicture';

/** The program's name. */
const ZBAR = 'zbarimg';

/** Why zbar is not asked; null where it is there. */
export const NO_ZBAR = (() => {
  try {
    execFileSync(ZBAR, ['--version'], { stdio: 'ignore' });
    return null;
  } catch {
    return 'zbarimg is not there: apt-get install -y --no-install-recommends zbar-tools';
  }
})();

/** The texts of the symbols in a picture, as zbar reads them. */
export function readByZbar(picture: Picture): readonly string[] {
  const folder = mkdtempSync(join(tmpdir(), 'footmark-qr-'));
  try {
    const file = join(folder, 'symbol.pgm');
    writeFileSync(file, pgm(picture));
    const args = ['--quiet', '--raw', '-Sdisable', '-Sqrcode.enable', file];
    const text = execFileSync(ZBAR, args, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] });
    return text.split('\n').filter((line) => line !== '');
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const wasm = createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm');

/** The same by ZXing, with the version and the level that it found. */
export async function readByZxing(picture: Picture) {
  const { buffer, byteOffset, byteLength } = readFileSync(wasm);
  prepareZXingModule({ overrides: { wasmBinary: buffer.slice(byteOffset, byteOffset + byteLength) } });
  const found = await readBarcodes(pgm(picture), { formats: ['QRCode'] });
  return found.filter((symbol) => symbol.isValid);
}
