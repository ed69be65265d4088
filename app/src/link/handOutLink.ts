/** Whether this device has a share sheet that takes addresses. */
export function canShareLinks(): boolean {
  return typeof navigator.share === 'function';
}

/** Hands an address to the device's share sheet. */
export async function shareLink(url: string, title: string): Promise<void> {
  try {
    await navigator.share({ url, title });
  } catch (error) {
    if (!(error instanceof DOMException && error.name === 'AbortError')) throw error; // the person thought better of it
  }
}

/** Whether the clipboard took it. */
export async function copyLink(url: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(url);
    return true;
  } catch {
    return false;
  }
}
