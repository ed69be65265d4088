/** What can be fetched ahead of its use. */
type Comes = { bring(): Promise<void> };

/** Where the browser does not say when it has nothing else to do (ms). */
const PAUSE_MS = 200;

/**
 * Fetches parts one after another while nothing else is to be done, so that they are here when they are wanted. What does not come is
 * asked for again when it is. Returns how to stop.
 */
export function bringSoon(parts: readonly Comes[]): () => void {
  let left = false;
  void (async () => {
    for (const part of parts) {
      await idle();
      if (left) return;
      await part.bring().catch(() => undefined);
    }
  })();
  return () => {
    left = true;
  };
}

function idle(): Promise<void> {
  return new Promise((resolve) => {
    // Safari has no idle callbacks
    if ('requestIdleCallback' in window) window.requestIdleCallback(() => resolve(), { timeout: 2000 });
    else setTimeout(resolve, PAUSE_MS);
  });
}
