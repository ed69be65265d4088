import type PouchDB from 'pouchdb-browser';
import { readPictureHeader } from '../pictures/pictureHeader';
import { MOST_BYTES } from '../pictures/pictureLimits';
import { placeKeptIn, withoutMetadata } from '../pictures/withoutMetadata';
import type { DeviceDatabase } from '../storage/database';

const PREFIX = 'file:';
const ATTACHMENT = 'picture';

/** The document of a picture, which is written once. */
type FileDocument = {
  readonly _id: string;
  readonly is: 'file';
  readonly site: string;
  readonly name: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly addedAt: number;
};

/** The picture whose document that is; null for any other document. */
export function fileOfDocument(id: string): string | null {
  return id.startsWith(PREFIX) ? id.slice(PREFIX.length) : null;
}

/** Puts the pictures that a site names, or a version of its things that waits beside it, into the replica, those that are not there yet. */
export async function sendFiles(db: DeviceDatabase, replica: PouchDB, site: string): Promise<void> {
  const text = JSON.stringify((await db.get('sites', site)) ?? null);
  for (const id of await db.getAllKeys('files')) {
    if (!text.includes(`"${id}"`) || (await has(replica, `${PREFIX}${id}`))) continue;
    const file = await db.get('files', id);
    if (file === undefined) continue;
    const { site: of, name, widthPx, heightPx, addedAt } = file;
    const blob = await bareBlob(file.blob);
    if (blob === null) continue;
    const document: FileDocument = {
      _id: `${PREFIX}${id}`,
      is: 'file',
      site: of,
      name,
      widthPx,
      heightPx,
      addedAt,
    };
    await replica.put({
      ...document,
      _attachments: { [ATTACHMENT]: { content_type: blob.type, data: blob } },
    });
  }
}

/** A picture as it may leave the device: one that was taken in long ago may still tell more than was wished. Null: it cannot be followed. */
async function bareBlob(blob: Blob): Promise<Blob | null> {
  const bytes = new Uint8Array(await blob.arrayBuffer());
  const header = readPictureHeader(bytes);
  if (!header.ok) return null;
  const { type, orientation } = header;
  const bare = withoutMetadata(bytes, type, orientation, placeKeptIn(bytes, type, orientation));
  return bare === null ? null : new Blob([bare], { type: blob.type });
}

/** Takes a picture out of the replica, if the device does not have it. What is no picture is left there. */
export async function takeFile(db: DeviceDatabase, replica: PouchDB, id: string): Promise<void> {
  if ((await db.getKey('files', id)) !== undefined) return;
  const document = await replica.get<Partial<FileDocument>>(`${PREFIX}${id}`).catch(() => null);
  if (document?.is !== 'file' || typeof document.site !== 'string') return;
  const blob = await replica.getAttachment(`${PREFIX}${id}`, ATTACHMENT).catch(() => null);
  if (blob === null || blob.size > MOST_BYTES) return;
  const header = readPictureHeader(new Uint8Array(await blob.arrayBuffer()));
  if (!header.ok) return;
  const turned = header.orientation >= 5;
  await db.put('files', {
    id,
    site: document.site,
    blob: new Blob([blob], { type: `image/${header.type}` }), // what it is, not what its document says
    name: String(document.name ?? '').slice(0, 200),
    widthPx: turned ? header.heightPx : header.widthPx,
    heightPx: turned ? header.widthPx : header.heightPx,
    addedAt: Number(document.addedAt) || 0,
  });
}

function has(replica: PouchDB, id: string): Promise<boolean> {
  return replica.get(id).then(
    () => true,
    () => false,
  );
}
