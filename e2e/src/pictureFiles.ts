import { crc32, deflateSync } from 'node:zlib';

/** Bytes of picture files to try the app with, made by the formats' own texts (PNG, W3C third edition, 5; ISO/IEC 14496-12, 4.3). */
export const pictureFiles = {
  /** A whole grey picture. */
  png: (widthPx: number, heightPx: number): Buffer => {
    const rows = Buffer.alloc((widthPx + 1) * heightPx, 0x80);
    for (let row = 0; row < heightPx; row++) rows[row * (widthPx + 1)] = 0; // no filter
    return Buffer.concat([
      begins(widthPx, heightPx),
      chunk('IDAT', deflateSync(rows)),
      chunk('IEND', Buffer.alloc(0)),
    ]);
  },
  /** A picture that says its size and then breaks off. */
  cutPng: (widthPx: number, heightPx: number): Buffer => begins(widthPx, heightPx),
  /** How a phone's HEIC file begins: a file type box of the brand `heic`. */
  heic: (): Buffer => Buffer.from('\0\0\0\x18ftypheic\0\0\0\0mif1heic', 'latin1'),
};

function begins(widthPx: number, heightPx: number): Buffer {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(widthPx, 0);
  header.writeUInt32BE(heightPx, 4);
  header[8] = 8; // bits, of grey
  return Buffer.concat([Buffer.from('\x89PNG\r\n\x1a\n', 'latin1'), chunk('IHDR', header)]);
}

function chunk(type: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const length = Buffer.alloc(4);
  length.writeUInt32BE(data.length);
  const sum = Buffer.alloc(4);
  sum.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, sum]);
}
