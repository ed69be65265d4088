import { database } from './database';
import type { StoredFile } from './records';

/** Writes a file. Resolves when the device has it. */
export async function saveFile(file: StoredFile): Promise<void> {
  await (await database()).put('files', file);
}

/** Reads a file; null when it is not on this device. */
export async function loadFile(id: string): Promise<StoredFile | null> {
  return (await (await database()).get('files', id)) ?? null;
}
