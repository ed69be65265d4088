import type { Answer } from '@footmark/site';
import { crewAnswer } from '../link/crewAnswer';

/** Invented answers of a crew with a photo at each mark: nothing yet, one thing, several. */
export function soundAnswers(): readonly Answer[] {
  return [0, 1, 8].map((count) => {
    const answer = crewAnswer(count);
    return { ...answer, found: answer.found.map((report) => ({ ...report, photos: ['i1'] })) };
  });
}
