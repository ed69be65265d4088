/** Things to do one after the other; what is added again while it waits is done once. */
export type WorkQueue = {
  add(item: string): void;
  readonly size: number;
};

/**
 * `doOne` does one; what it refuses is done again after `pauseMs`. `onRest` is told each time when all is done, and whether all of it went
 * well.
 */
export function workQueue(
  doOne: (item: string) => Promise<void>,
  onRest: (well: boolean) => Promise<void>,
  pauseMs: number,
): WorkQueue {
  const waiting = new Set<string>();
  let working = false;
  const work = async () => {
    working = true;
    let well = true;
    // it grows while it is walked
    for (const item of waiting) {
      waiting.delete(item);
      await doOne(item).catch(() => {
        well = false;
        setTimeout(add, pauseMs, item);
      });
    }
    working = false;
    await onRest(well);
  };
  const add = (item: string) => {
    waiting.add(item);
    if (!working) void work();
  };
  return {
    add,
    get size() {
      return waiting.size;
    },
  };
}
