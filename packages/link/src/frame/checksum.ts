/** The polynomial of CRC-32 as Ethernet and zip files use it, lowest power first (ITU-T V.42; from memory, held to zlib by a test). */
const POLYNOMIAL = 0xedb88320;

/** CRC-32 of bytes, 0 up to 2³² − 1. It notices every single changed byte, and every change within four bytes in a row. */
export function checksum(bytes: Iterable<number>): number {
  let rest = 0xffffffff;
  for (const byte of bytes) {
    rest ^= byte;
    for (let bit = 0; bit < 8; bit++) rest = rest & 1 ? (rest >>> 1) ^ POLYNOMIAL : rest >>> 1;
  }
  return (rest ^ 0xffffffff) >>> 0;
}
