import { type OpenedAnswer, readAnswer, writeAnswer } from '@footmark/site';
import { en, es } from '@footmark/words';
import { jsonMutators } from '../mutate/json';
import { bytesOf, type FuzzReader, inWords, textOf } from '../reader';
import { soundAnswers } from '../soundAnswers';
import { isSameData, noNumberIn } from '../whole';

type Read = {
  readonly accepted: boolean;
  readonly opened: OpenedAnswer;
  readonly written: string;
  readonly again: OpenedAnswer | null;
};

/** The file that a crew sends back. Partial: not all that it says, or not what comes back from its own file. */
export const reader: FuzzReader<Read> = {
  name: 'crew’s answer',
  seeds: () => soundAnswers().map((answer) => bytesOf(writeAnswer(answer))),
  mutators: jsonMutators,
  read(input) {
    const opened = readAnswer(textOf(input));
    if (!opened.ok) {
      for (const words of [en, es]) inWords(words.crew.answerProblemText(opened.failure));
      return { accepted: false, opened, written: '', again: null };
    }
    const written = writeAnswer(opened.answer);
    return { accepted: true, opened, written, again: readAnswer(written) };
  },
  judge(input, { opened, written, again }) {
    if (!opened.ok || again === null) return 'accepted without an answer';
    if (!again.ok) return `accepted, and its own file is refused: ${JSON.stringify(again.failure)}`;
    if (writeAnswer(again.answer) !== written) return 'another file when it is written again';
    const ids = opened.answer.found.map(({ id }) => id);
    if (new Set(ids).size !== ids.length) return 'two records of one id';
    if (!isSameData(JSON.parse(textOf(input)), opened.answer)) return 'not all that the file says';
    return noNumberIn(opened.answer);
  },
};
