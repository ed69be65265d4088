/** One file of a zip as its central directory lists it. */
export type ZipEntry = {
  readonly name: string;
  readonly crc32: number;
  readonly packedBytes: number;
  readonly bytes: number;
  readonly method: number;
  /** Where its packed bytes begin in the archive. */
  readonly start: number;
  readonly isLink: boolean;
};

export type ZipProblem = 'not-a-zip' | 'damaged' | 'not-read';

/** Signatures and places by APPNOTE.TXT, the zip file format, 4.3 (from memory; the tests read archives of other programs). */
const END_SIGNATURE = 0x06054b50;
const ENTRY_SIGNATURE = 0x02014b50;
const LOCAL_SIGNATURE = 0x04034b50;
const END_BYTES = 22;
const ENTRY_BYTES = 46;
const LOCAL_BYTES = 30;
const LONGEST_COMMENT = 0xffff;

/** A size or a count that stands elsewhere, in the form for large archives. */
const ELSEWHERE = [0xffff, 0xffffffff];

const ENCRYPTED = 1;
const UNIX_LINK = 0xa000;

/**
 * The files of a zip by its central directory, folders left out; at most `most` of them and one more. `decode` makes a name of bytes. Archives in
 * several parts, in the large form, or encrypted are `not-read`.
 */
export function zipDirectory(
  bytes: Uint8Array,
  most: number,
  decode: (name: Uint8Array) => string,
): readonly ZipEntry[] | ZipProblem {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length < END_BYTES || view.getUint32(0, true) !== LOCAL_SIGNATURE) return 'not-a-zip';
  const end = endOf(view);
  if (end === null) return 'damaged';
  const count = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  if (ELSEWHERE.includes(count) || ELSEWHERE.includes(at)) return 'not-read';
  if (view.getUint16(end + 4, true) !== 0 || view.getUint16(end + 8, true) !== count) return 'not-read';
  const entries: ZipEntry[] = [];
  for (let i = 0; i < count && entries.length <= most; i += 1) {
    if (at + ENTRY_BYTES > end || view.getUint32(at, true) !== ENTRY_SIGNATURE) return 'damaged';
    const [nameBytes, extraBytes, commentBytes] = [28, 30, 32].map((o) => view.getUint16(at + o, true));
    const next = at + ENTRY_BYTES + (nameBytes ?? 0) + (extraBytes ?? 0) + (commentBytes ?? 0);
    if (next > end) return 'damaged';
    const name = decode(bytes.subarray(at + ENTRY_BYTES, at + ENTRY_BYTES + (nameBytes ?? 0)));
    const packedBytes = view.getUint32(at + 20, true);
    const size = view.getUint32(at + 24, true);
    const local = view.getUint32(at + 42, true);
    if ([packedBytes, size, local].some((n) => ELSEWHERE.includes(n))) return 'not-read';
    if ((view.getUint16(at + 8, true) & ENCRYPTED) !== 0) return 'not-read';
    const start = dataStart(view, local, packedBytes, end);
    if (start === null) return 'damaged';
    if (!name.endsWith('/')) {
      entries.push({
        name,
        crc32: view.getUint32(at + 16, true),
        packedBytes,
        bytes: size,
        method: view.getUint16(at + 10, true),
        start,
        isLink: (view.getUint16(at + 40, true) & 0xf000) === UNIX_LINK,
      });
    }
    at = next;
  }
  return entries;
}

/** Where the end record stands: it is sought from the end, before a comment that may follow it. Null: there is none. */
function endOf(view: DataView): number | null {
  const last = view.byteLength - END_BYTES;
  for (let at = last; at >= Math.max(0, last - LONGEST_COMMENT); at -= 1) {
    const ends = view.getUint32(at, true) === END_SIGNATURE;
    if (ends && at + END_BYTES + view.getUint16(at + 20, true) === view.byteLength) return at;
  }
  return null;
}

/** Where the packed bytes of a file begin, behind its local header. Null: they are not there. */
function dataStart(view: DataView, local: number, packedBytes: number, end: number): number | null {
  if (local + LOCAL_BYTES > end || view.getUint32(local, true) !== LOCAL_SIGNATURE) return null;
  const start = local + LOCAL_BYTES + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
  return start + packedBytes > end ? null : start;
}
