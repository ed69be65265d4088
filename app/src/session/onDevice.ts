/** Keeps a text on this device by a name; false where the browser's storage is blocked or full. */
export function remember(key: string, text: string): boolean {
  try {
    window.localStorage.setItem(key, text);
    return true;
  } catch {
    return false;
  }
}

/** What was kept by a name; null where nothing was, or the browser's storage is blocked. */
export function recall(key: string): string | null {
  try {
    return window.localStorage.getItem(key);
  } catch {
    return null;
  }
}

/** What was kept as JSON; null also where it is none, as another hand may have written it. */
export function recallJson(key: string): unknown {
  try {
    return JSON.parse(recall(key) ?? 'null');
  } catch {
    return null;
  }
}
