import { type IncomingAnswers, incomingSite } from '@footmark/exchange';
import { useEffect, useState } from 'react';
import { workerDesk } from '../session/desk';
import { useDerived } from '../session/siteSession';
import { type ReadIn, type ReadInAsked, readIn } from './readIn';

const desk = workerDesk<ReadInAsked, ReadIn>(
  () => new Worker(new URL('./readInWorker.ts', import.meta.url), { type: 'module' }),
  (asked) => readIn(asked),
);

/** A file that was chosen, by a number of its own. */
export type ChosenFile = { readonly file: number; readonly name: string; readonly bytes: Uint8Array };

/** What a chosen file comes to as it is answered now, or how far it is read (0 to 1). */
export function useReadIn(chosen: ChosenFile, answers: IncomingAnswers): ReadIn | number {
  const derived = useDerived();
  const [state, setState] = useState<ReadIn | number>(0);
  useEffect(() => {
    const { file, bytes } = chosen;
    desk.ask({ file, bytes, answers, site: incomingSite(derived) }, setState, setState);
    return () => desk.drop();
  }, [chosen, answers, derived]);
  return state;
}
