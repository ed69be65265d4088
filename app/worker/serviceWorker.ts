// The service worker: keeps the whole program on the device, and serves it from there. Built into one script that stands alone.

const worker = globalThis as unknown as ServiceWorkerGlobalScope; // the library's types are those of any worker

/** Written in by the build: every file with its hash, and a version that follows from them. */
declare const __PRECACHE__: {
  readonly version: string;
  readonly files: readonly { readonly path: string; readonly integrity: string }[];
};

const { version, files } = __PRECACHE__;
const PREFIX = 'footmark-';
const OWN = `${PREFIX}${version}`;
const PAGE = 'index.html';
/** Names in this folder say what is in the files. */
const ASSETS = 'assets/';
const paths = new Set(files.map(({ path }) => path));

/** Where a file is asked for: the page under the folder's own address, from which no server redirects. */
const addressOf = (path: string) => new URL(path === PAGE ? './' : path, worker.registration.scope).href;

/** The path of a file below the app's address; null for anything else. The page has no other query than what others hang on. */
function pathOf(request: Request): string | null {
  const { origin, pathname } = new URL(request.url);
  const scope = new URL(worker.registration.scope);
  if (request.method !== 'GET' || origin !== scope.origin || !pathname.startsWith(scope.pathname))
    return null;
  return decodeURI(pathname.slice(scope.pathname.length)) || PAGE;
}

/** So many files come at once. */
const AT_ONCE = 6;

/** Fetches every file, all or none: what is already there is not fetched again. */
async function keepAll(): Promise<void> {
  const cache = await caches.open(OWN);
  const isThere = new Set((await cache.keys()).map(({ url }) => url));
  const missing = files.filter(({ path }) => !isThere.has(addressOf(path)));
  const keepNext = async () => {
    for (let file = missing.pop(); file !== undefined; file = missing.pop()) {
      const address = addressOf(file.path);
      await cache.put(address, await fetched(address, file));
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, keepNext));
}

/** A file just as it was built, or an error. What an older version keeps under a name that says what is in it is not fetched again. */
async function fetched(address: string, { path, integrity }: (typeof files)[number]): Promise<Response> {
  const older = path.startsWith(ASSETS) ? await caches.match(address) : undefined;
  if (older !== undefined) return older;
  const cache = path.startsWith(ASSETS) ? 'default' : 'no-cache';
  const response = await fetch(address, { cache, integrity, credentials: 'same-origin' });
  if (!response.ok) throw new Error(`${address}: ${response.status}`);
  return response;
}

/** Throws away what older versions have kept, once at most one page is left that could still ask for it. */
async function tidy(): Promise<void> {
  const pages = await worker.clients.matchAll({ type: 'window', includeUncontrolled: true });
  const { installing, waiting } = worker.registration;
  // what is not this version's may also be that of a newer one, which waits to be taken
  if (pages.length > 1 || installing !== null || waiting !== null) return;
  const names = await caches.keys();
  await Promise.all(
    names.filter((name) => name.startsWith(PREFIX) && name !== OWN).map((name) => caches.delete(name)),
  );
}

/** From this version, else from an older one whose page is still open, else from the network. */
async function answer(path: string, request: Request): Promise<Response> {
  const address = addressOf(path);
  const kept = (await (await caches.open(OWN)).match(address)) ?? (await caches.match(address));
  return kept ?? fetch(request);
}

worker.addEventListener('install', (event) => event.waitUntil(keepAll()));

worker.addEventListener('activate', (event) =>
  event.waitUntil(Promise.all([worker.clients.claim(), tidy()])),
);

worker.addEventListener('message', (event) => {
  if (event.data === 'take-over') event.waitUntil(worker.skipWaiting());
});

worker.addEventListener('fetch', (event) => {
  const path = pathOf(event.request);
  if (path === null || !(paths.has(path) || path.startsWith(ASSETS))) return;
  event.respondWith(answer(path, event.request));
  if (event.request.mode === 'navigate') event.waitUntil(tidy());
});
