import cards from '../../cards/cards.module.css';
import { Action } from '../../controls/Action';
import { words } from '../../words';
import type { AnswerFilesFailure } from './readAnswerFiles';

const OF_SEVERAL = {
  'no-answer': {
    text: 'None of these files is a crew’s answer.',
    cure: 'Choose the file that ends in .json together with its photos.',
    problems: [],
  },
  several: {
    text: 'These are several answers.',
    cure: 'Choose one at a time, each with its photos.',
    problems: [],
  },
} as const;

type Props = { readonly failure: AnswerFilesFailure; readonly onClose: () => void };

/** Why an answer was not opened, and what to do. */
export function AnswerProblem({ failure, onClose }: Props) {
  const { text, cure, problems } =
    failure.code === 'no-answer' || failure.code === 'several'
      ? OF_SEVERAL[failure.code]
      : words.crew.answerProblemText(failure);
  return (
    <div className={cards.problem} role="alert">
      <p>
        <strong>{text}</strong> {cure}
      </p>
      {problems.map((line) => (
        <p key={line}>{line}</p>
      ))}
      <Action onPress={onClose}>Close</Action>
    </div>
  );
}
