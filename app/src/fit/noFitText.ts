/** What is said where no fit is there to show: it is on its way, could not be made, or has nothing to be made of. */
export function noFitText({ busy, failed }: { readonly busy: boolean; readonly failed: boolean }): string {
  if (busy) return 'Weighing what is known.';
  if (failed) return 'What is known could not be weighed. The marks stand as drawn.';
  return 'There is nothing to weigh without a run.';
}
