/** Runs steps to their end at once, for who need not stay responsive. */
export function finishSteps<T>(steps: Generator<number, T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}
