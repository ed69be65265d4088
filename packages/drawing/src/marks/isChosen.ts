import type { Mark } from '@footmark/site';
import type { Highlight } from '../drawOptions';

export function isChosen({ run, reading }: Mark, highlight: Highlight | undefined): boolean {
  return highlight?.mark?.run === run.id && highlight.mark.id === reading.id;
}
