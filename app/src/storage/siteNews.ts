/** A site was written on this device, by any tab or worker: its id, and the count of its writes now (null: it is gone). */
export type SiteNews = { readonly id: string; readonly seq: number | null };

let channel: BroadcastChannel | null = null;
const listeners = new Set<(news: SiteNews) => void>();

function open(): BroadcastChannel | null {
  if (channel !== null) return channel;
  try {
    channel = new BroadcastChannel('footmark-sites');
  } catch {
    return null; // a page without storage has no other tabs to tell
  }
  channel.onmessage = ({ data }: MessageEvent<SiteNews>) => {
    for (const listener of listeners) listener(data);
  };
  return channel;
}

/** Tells the other tabs and workers. */
export function tellSiteNews(news: SiteNews): void {
  open()?.postMessage(news);
}

/** Hears what other tabs and workers wrote, not what this one did; gives back how to stop. */
export function onSiteNews(listener: (news: SiteNews) => void): () => void {
  open();
  listeners.add(listener);
  return () => listeners.delete(listener);
}
