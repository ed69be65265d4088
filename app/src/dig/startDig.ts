import { addDig, type Dig, type Mark } from '@footmark/site';
import { currentSite, derivedFrom, edit } from '../session/siteSession';
import { newId } from '../tools/newId';
import { showDig } from './showDig';

const NOTHING_SAID = { name: '', note: '' } as const;

/** Plans a pit that finds a mark. */
export function startPit({ run, reading }: Mark): void {
  plan({ id: newId('d'), is: 'pit', at: { run: run.id, reading: reading.id }, ...NOTHING_SAID });
}

/** Plans a trench along the whole of a pipe; where it begins and ends can be changed. */
export function startTrench(path: string): void {
  const length = derivedFrom(currentSite()).paths.get(path)?.length ?? 0;
  if (length > 0) plan({ id: newId('d'), is: 'trench', path, from: 0, to: length, ...NOTHING_SAID });
}

function plan(dig: Dig): void {
  if (edit('Plan a dig', (s) => addDig(s, { dig }))) showDig(dig.id);
}
