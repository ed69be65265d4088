import { Inflate } from 'fflate';
import { crc32 } from './crc32';
import type { ZipEntry } from './zipDirectory';

/** Packed bytes that are inflated at once: DEFLATE swells them a thousandfold at most, so never more than some megabytes. */
const CHUNK = 4096;

const [STORED, DEFLATED] = [0, 8];

/**
 * The bytes of one file. No more is inflated than the directory says that there is: a file that swells beyond is `damaged`, as is one whose
 * checksum is not the one that the archive has.
 */
export function unpackEntry(archive: Uint8Array, entry: ZipEntry): Uint8Array | 'damaged' | 'not-read' {
  const packed = archive.subarray(entry.start, entry.start + entry.packedBytes);
  if (entry.method === STORED) return checked(packed.slice(), entry);
  return entry.method === DEFLATED ? inflated(packed, entry) : 'not-read';
}

function inflated(packed: Uint8Array, entry: ZipEntry): Uint8Array | 'damaged' {
  const whole = new Uint8Array(entry.bytes);
  let filled = 0;
  let swells = false;
  const inflate = new Inflate((part) => {
    if (filled + part.length > whole.length) swells = true;
    else whole.set(part, filled);
    filled += part.length;
  });
  try {
    for (let at = 0; at < packed.length && !swells; at += CHUNK)
      inflate.push(packed.subarray(at, at + CHUNK), at + CHUNK >= packed.length);
  } catch {
    return 'damaged';
  }
  return swells || filled !== whole.length ? 'damaged' : checked(whole, entry);
}

function checked(bytes: Uint8Array, entry: ZipEntry): Uint8Array | 'damaged' {
  return bytes.length === entry.bytes && crc32(bytes) === entry.crc32 ? bytes : 'damaged';
}
