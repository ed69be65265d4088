import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';

/** What a file or standard input held, or why it could not be taken. */
export type FileText =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly code: 'too-large'; readonly bytes: number }
  | { readonly ok: false; readonly code: 'unreadable'; readonly why: string }
  | { readonly ok: false; readonly code: 'not-text' };

/**
 * Reads UTF-8 text of at most `most` bytes from a file, or from standard input for `-`. A larger file is refused by its size
 * without being read; a pipe, which has none, as soon as it has given more.
 */
export async function readCapped(file: string, most: number): Promise<FileText> {
  try {
    if (file === '-') return await readStream(process.stdin, most);
    const facts = await stat(file);
    if (facts.isDirectory()) return { ok: false, code: 'unreadable', why: 'it is a folder' };
    if (facts.size > most) return { ok: false, code: 'too-large', bytes: facts.size };
    return await readStream(createReadStream(file), most);
  } catch (error) {
    return { ok: false, code: 'unreadable', why: reasonOf(error) };
  }
}

async function readStream(stream: AsyncIterable<Buffer>, most: number): Promise<FileText> {
  const chunks: Buffer[] = [];
  let bytes = 0;
  for await (const chunk of stream) {
    bytes += chunk.length;
    if (bytes > most) return { ok: false, code: 'too-large', bytes };
    chunks.push(chunk);
  }
  try {
    return { ok: true, text: new TextDecoder('utf-8', { fatal: true }).decode(Buffer.concat(chunks)) };
  } catch {
    return { ok: false, code: 'not-text' };
  }
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  ENOTDIR: 'there is no such file',
  EACCES: 'it may not be read',
  EPERM: 'it may not be read',
};

function reasonOf(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return REASONS[code] ?? (error instanceof Error ? error.message : String(error));
}
