import { create } from 'zustand';

/** Whether the browser has promised not to clear what is stored here when the device runs short of room. */
type Kept = 'not-asked' | 'promised' | 'not-promised' | 'unknown';

export const useKept = create<{ readonly kept: Kept }>()(() => ({ kept: 'unknown' }));

let asked = false;

/** Learns what the browser has promised before, without asking for anything. */
export async function lookIfKept(): Promise<void> {
  const storage = storageManager();
  if (storage?.persisted === undefined) return;
  try {
    const promised = await storage.persisted();
    if (promised || !asked) useKept.setState({ kept: promised ? 'promised' : 'not-asked' });
  } catch {
    // a browser that keeps nothing promises nothing
  }
}

/** Asks the browser to keep what is stored here: once, when the first work of this visit is on the device. */
export function askToKeep(): void {
  if (asked) return;
  asked = true;
  void storageManager()
    ?.persist?.()
    .then(
      (promised) => useKept.setState({ kept: promised ? 'promised' : 'not-promised' }),
      () => {}, // as above
    );
}

/** Absent on a page that came without TLS. */
function storageManager(): StorageManager | undefined {
  return navigator.storage as StorageManager | undefined; // the types take every page for a secure one
}
