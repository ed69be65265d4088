import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { SiteEntry, StoredAnswer, StoredFile } from './records';

interface DeviceDatabase extends DBSchema {
  sites: { key: string; value: { id: string; site: unknown } };
  entries: { key: string; value: SiteEntry };
  files: { key: string; value: StoredFile };
  answers: { key: string; value: StoredAnswer };
}

/** Raised by one for every new store. 1: sites and their entries; 2: files; 3: answers. */
const VERSION = 3;

let opening: Promise<IDBPDatabase<DeviceDatabase>> | null = null;

/** The app's database on this device, opened once. */
export function database(): Promise<IDBPDatabase<DeviceDatabase>> {
  opening ??= openDB<DeviceDatabase>('footmark', VERSION, {
    upgrade(db, from) {
      if (from < 1) {
        db.createObjectStore('sites', { keyPath: 'id' });
        db.createObjectStore('entries', { keyPath: 'id' });
      }
      if (from < 2) db.createObjectStore('files', { keyPath: 'id' });
      if (from < 3) db.createObjectStore('answers', { keyPath: 'id' });
    },
    blocking(_current, _wanted, event) {
      // another tab brings a newer version: this one makes way, and opens anew with its next call
      (event.target as IDBDatabase).close(); // the event comes from the open database
      opening = null;
    },
    terminated() {
      opening = null;
    },
  }).catch((error: unknown) => {
    opening = null;
    throw error;
  });
  return opening;
}
