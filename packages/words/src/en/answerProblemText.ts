import type { AnswerFailure } from '@footmark/site';
import type { SaidOfFile } from '../said';
import { fileProblemText } from './fileProblemText';

/** Why a file is not a crew's answer that can be read, and what to do. */
export function answerProblemText(failure: AnswerFailure): SaidOfFile {
  switch (failure.code) {
    case 'not-an-answer':
      return {
        text: 'The file is JSON, but it is not a crew’s answer.',
        cure: 'Choose a file that was sent from the crew view; it says "format": "footmark-answer" at its top.',
        problems: [],
      };
    case 'too-large':
      return {
        text: 'The file is too large for a crew’s answer.',
        cure: 'Check that it is the right file.',
        problems: [],
      };
    case 'same-id':
      return {
        text: `The answer has two records of the id ${JSON.stringify(failure.id)}, so it was damaged on the way.`,
        cure: 'Ask the crew to send it again.',
        problems: [],
      };
    case 'invalid': {
      const count = failure.problems.length + failure.more;
      return {
        ...fileProblemText(failure),
        text:
          count === 1
            ? 'The file is not a sound answer: one place in it is wrong.'
            : `The file is not a sound answer: ${count} places in it are wrong.`,
        cure: 'Ask the crew to send it again.',
      };
    }
    case 'not-json':
      return {
        ...fileProblemText(failure),
        text: 'The file is not JSON, so it is not a crew’s answer or it was damaged on the way.',
      };
    case 'newer-version':
      return fileProblemText(failure);
  }
}
