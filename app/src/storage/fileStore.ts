import { database } from './database';

/** A picture that a site names by its id. It stays on the device: the site file carries the id, not the picture. */
export type StoredFile = {
  readonly id: string;
  /** The site that it was added to. */
  readonly site: string;
  readonly blob: Blob;
  /** What the device called it. */
  readonly name: string;
  readonly widthPx: number;
  readonly heightPx: number;
  /** Milliseconds since 1970. */
  readonly addedAt: number;
};

/** Writes a file. Resolves when the device has it. */
export async function saveFile(file: StoredFile): Promise<void> {
  await (await database()).put('files', file);
}

/** Reads a file; null when it is not on this device. */
export async function loadFile(id: string): Promise<StoredFile | null> {
  return (await (await database()).get('files', id)) ?? null;
}
