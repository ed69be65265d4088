/** A frame that has not come after this (ms) is not waited for. */
const LATEST_MS = 50;

/**
 * Runs what need not be in the frame that shows an edit as soon as that has been painted; at once where the page is not seen, as nothing is painted
 * then. Gives what calls it off.
 */
export function oncePainted(run: () => void): () => void {
  if (document.visibilityState === 'hidden') {
    run();
    return () => undefined;
  }
  let due = true;
  const off = () => {
    due = false;
    clearTimeout(latest);
  };
  const go = () => {
    if (!due) return;
    off();
    run();
  };
  const latest = setTimeout(go, LATEST_MS);
  requestAnimationFrame(() => setTimeout(go));
  return off;
}
