import { create } from 'zustand';

type Program = {
  /** The whole program is on this device and starts without a network. */
  readonly isKept: boolean;
  /** A newer version has come and waits to be taken, or another tab has taken it. */
  readonly hasNewer: boolean;
};

export const useProgram = create<Program>()(() => ({ isKept: false, hasNewer: false }));

/** A page that stays open looks for a newer version this often at most (ms). */
const LOOK_MS = 60 * 60 * 1000;

let waiting: ServiceWorker | null = null;
let taken = false;

/** Keeps the program on this device, where the browser can, and looks for newer versions. Nothing is taken unasked. */
export function startOffline(): void {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  const { serviceWorker } = navigator;
  let isFirst = serviceWorker.controller === null;
  serviceWorker.addEventListener('controllerchange', () => {
    if (taken) window.location.reload();
    // the first version takes charge of the page that brought it; any other was taken in another tab
    else if (!isFirst) {
      waiting = null;
      useProgram.setState({ hasNewer: true });
    }
    isFirst = false;
  });
  void serviceWorker.ready.then(() => useProgram.setState({ isKept: true }));
  const register = () => serviceWorker.register('./sw.js', { updateViaCache: 'none' }).then(watch, () => {});
  // what the page itself needs goes first
  if (document.readyState === 'complete') void register();
  else window.addEventListener('load', () => void register(), { once: true });
}

function watch(registration: ServiceWorkerRegistration): void {
  const offer = (worker: ServiceWorker | null) => {
    if (worker === null || navigator.serviceWorker.controller === null) return;
    waiting = worker;
    useProgram.setState({ hasNewer: true });
  };
  offer(registration.waiting);
  registration.addEventListener('updatefound', () => {
    const { installing } = registration;
    installing?.addEventListener('statechange', () => {
      if (installing.state === 'installed') offer(installing);
    });
  });
  let looked = Date.now();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState !== 'visible' || Date.now() - looked < LOOK_MS) return;
    looked = Date.now();
    registration.update().catch(() => {}); // without a network there is nothing newer
  });
}

/** Takes the newer version: the page is loaded anew. False while something on it is not saved yet; then nothing is done. */
export function takeNewer(): boolean {
  // whoever has unsaved work on the page says so when it is about to be left
  if (!window.dispatchEvent(new Event('beforeunload', { cancelable: true }))) return false;
  taken = true;
  if (waiting === null) window.location.reload();
  else waiting.postMessage('take-over');
  return true;
}
