let sink = 0;

/** Milliseconds of each run after `warmUp` others. What the work gives goes into a sum that is printed, so that none of it can be left out. */
export function timesOf(runs: number, warmUp: number, work: () => number): readonly number[] {
  for (let k = 0; k < warmUp; k++) sink += work();
  return Array.from({ length: runs }, () => {
    const start = performance.now();
    sink += work();
    return performance.now() - start;
  });
}

/** What it ran on, and the sum. */
export function ranOn(): string {
  return `node ${process.version}, sink ${sink.toPrecision(6)}`;
}
