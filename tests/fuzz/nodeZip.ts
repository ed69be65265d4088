import { crc32, deflateRawSync, inflateRawSync } from 'node:zlib';

// Zip by Node's own zlib, which shares no code with the library of the readers. Records by APPNOTE.TXT, 4.3 (from memory).

export const LOCAL = 0x04034b50;
export const ENTRY = 0x02014b50;
export const END = 0x06054b50;

/** A file of an archive; `bytes` is null where they are not what the directory says. */
export type ZipFile = { readonly name: string; readonly bytes: Uint8Array | null };

/** The files that the directory lists. Throws a RangeError where a record lies outside. */
export function zipFiles(input: Uint8Array): readonly ZipFile[] {
  const all = Buffer.from(input.buffer, input.byteOffset, input.byteLength);
  const end = all.lastIndexOf(Buffer.from([0x50, 0x4b, 5, 6]));
  const files: ZipFile[] = [];
  let at = all.readUInt32LE(end + 16);
  for (let n = all.readUInt16LE(end + 10); n > 0; n -= 1) {
    const nameLength = all.readUInt16LE(at + 28);
    const local = all.readUInt32LE(at + 42);
    const start = local + 30 + all.readUInt16LE(local + 26) + all.readUInt16LE(local + 28);
    const packed = all.subarray(start, start + all.readUInt32LE(at + 20));
    const bytes = unpacked(packed, all.readUInt16LE(at + 10), all.readUInt32LE(at + 24));
    const isSound = bytes !== null && crc32(bytes) === all.readUInt32LE(at + 16);
    files.push({ name: all.toString('utf8', at + 46, at + 46 + nameLength), bytes: isSound ? bytes : null });
    at += 46 + nameLength + all.readUInt16LE(at + 30) + all.readUInt16LE(at + 32);
  }
  return files;
}

function unpacked(packed: Buffer, method: number, size: number): Uint8Array | null {
  try {
    const whole = method === 0 ? packed : inflateRawSync(packed, { maxOutputLength: Math.max(1, size) });
    return whole.length === size ? whole : null;
  } catch {
    return null;
  }
}

export function zipOf(files: readonly (readonly [string, Uint8Array])[], packs: boolean): Uint8Array {
  const parts: Buffer[] = [];
  const directory: Buffer[] = [];
  let at = 0;
  for (const [name, bytes] of files) {
    const nameBytes = Buffer.from(name, 'utf8');
    const data = packs ? deflateRawSync(bytes) : Buffer.from(bytes);
    const facts = Buffer.alloc(26);
    facts.writeUInt16LE(20, 0);
    facts.writeUInt16LE(0x800, 2); // names are UTF-8
    facts.writeUInt16LE(packs ? 8 : 0, 4);
    facts.writeUInt32LE(crc32(bytes), 10);
    facts.writeUInt32LE(data.length, 14);
    facts.writeUInt32LE(bytes.length, 18);
    facts.writeUInt16LE(nameBytes.length, 22);
    const entry = Buffer.alloc(46);
    entry.writeUInt32LE(ENTRY, 0);
    facts.copy(entry, 6);
    entry.writeUInt32LE(at, 42);
    const local = Buffer.alloc(4);
    local.writeUInt32LE(LOCAL);
    parts.push(local, facts, nameBytes, data);
    directory.push(entry, nameBytes);
    at += 30 + nameBytes.length + data.length;
  }
  const list = Buffer.concat(directory);
  const end = Buffer.alloc(22);
  end.writeUInt32LE(END, 0);
  end.writeUInt16LE(files.length, 8);
  end.writeUInt16LE(files.length, 10);
  end.writeUInt32LE(list.length, 12);
  end.writeUInt32LE(at, 16);
  return new Uint8Array(Buffer.concat([...parts, list, end]));
}
