import { type DBSchema, type IDBPDatabase, openDB, unwrap } from 'idb';
import type {
  SiteEntry,
  StoredAnswer,
  StoredFile,
  StoredSite,
  StoredStamps,
  StoredTeam,
  StoredVersion,
} from './records';

export interface DeviceSchema extends DBSchema {
  sites: { key: string; value: StoredSite };
  entries: { key: string; value: SiteEntry };
  files: { key: string; value: StoredFile };
  answers: { key: string; value: StoredAnswer };
  versions: { key: [of: string, seq: number, at: number]; value: StoredVersion };
  stamps: { key: string; value: StoredStamps };
  teams: { key: string; value: StoredTeam };
}

export type DeviceDatabase = IDBPDatabase<DeviceSchema>;

/** Raised by one for every new store. 1: sites and their entries; 2: files; 3: answers; 4: versions, teams; 5: stamps. */
const VERSION = 5;

let opening: Promise<DeviceDatabase> | null = null;

/** The app's database on this device, opened once. */
export function database(): Promise<DeviceDatabase> {
  opening ??= openDevice('footmark', () => {
    opening = null;
  }).catch((error: unknown) => {
    opening = null;
    throw error;
  });
  return opening;
}

/** Opens a device's database by its name; `onGone` when it has closed itself: it is to be opened anew with the next call. */
export function openDevice(name: string, onGone: () => void = () => {}): Promise<DeviceDatabase> {
  return openDB<DeviceSchema>(name, VERSION, {
    upgrade(db, from) {
      if (from < 1) {
        db.createObjectStore('sites', { keyPath: 'id' });
        db.createObjectStore('entries', { keyPath: 'id' });
      }
      if (from < 2) db.createObjectStore('files', { keyPath: 'id' });
      if (from < 3) db.createObjectStore('answers', { keyPath: 'id' });
      if (from < 4) {
        db.createObjectStore('versions', { keyPath: ['of', 'seq', 'at'] });
        db.createObjectStore('teams', { keyPath: 'id' });
      }
      if (from < 5) db.createObjectStore('stamps', { keyPath: 'id' });
      if (from === 4) unwrap(db).deleteObjectStore('bases'); // what it was to be held against: it is exchanged anew
    },
    blocking(_current, _wanted, event) {
      // another tab brings a newer version, or the browser clears what is stored: this one makes way
      (event.target as IDBDatabase).close(); // the event comes from the open database
      onGone();
    },
    terminated: onGone,
  });
}
