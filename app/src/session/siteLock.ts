/** One tab holds a site at a time, so that two never write over each other. */
export type SiteLock = {
  /** Gives the site free for another tab. */
  readonly release: () => void;
};

/**
 * Takes a site for this tab: null when another tab has it, unless `takeOver`. `onLost` is called when another tab takes it over.
 * Where the browser knows no locks, every tab gets the site.
 */
export async function lockSite(id: string, takeOver: boolean, onLost: () => void): Promise<SiteLock | null> {
  if (!('locks' in navigator)) return { release: () => {} };
  for (let tries = 1; ; tries++) {
    const lock = await request(id, takeOver, onLost);
    if (lock !== null || tries === TRIES) return lock;
    await new Promise((resolve) => window.setTimeout(resolve, PAUSE_MS));
  }
}

/** A page that was just left gives its sites free a moment later. */
const TRIES = 4;
const PAUSE_MS = 80;

function request(id: string, takeOver: boolean, onLost: () => void): Promise<SiteLock | null> {
  let release = () => {};
  let held = false;
  const until = new Promise<void>((resolve) => {
    release = resolve;
  });
  let given = false;
  return new Promise((answer) => {
    const options: LockOptions = takeOver ? { steal: true } : { ifAvailable: true };
    navigator.locks
      .request(`footmark-site-${id}`, options, (lock) => {
        if (lock === null) {
          answer(null);
          return undefined;
        }
        held = true;
        answer({
          release: () => {
            given = true;
            release();
          },
        });
        return until;
      })
      .catch(() => {
        // stolen: another tab has the site now; never had: this browser gives no locks to a page without storage
        if (!held) answer({ release: () => {} });
        else if (!given) onLost();
      });
  });
}
