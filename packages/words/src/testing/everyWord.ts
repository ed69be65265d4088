import type { Words } from '../words';
import { everyCrewText } from './everyCrewText';
import { everyDigText } from './everyDigText';
import { everyFileText } from './everyFileText';
import { everyFitText } from './everyFitText';
import { everyIncomingText } from './everyIncomingText';
import { everyName, type SaidBy } from './everyName';
import { everyProblemText } from './everyProblemText';
import { everySheetText } from './everySheetText';
import { everySiteText } from './everySiteText';
import { everyWayText } from './everyWayText';

/** Everything that a language can say, by the function that says it; a function without a sample does not compile. */
export const everyWord: { readonly [Name in Exclude<keyof Words, 'language'>]: SaidBy } = {
  ...everyName,
  ...everySiteText,
  ...everyFitText,
  ...everyDigText,
  ...everyWayText,
  ...everyProblemText,
  ...everyFileText,
  ...everyIncomingText,
  ...everyCrewText,
  ...everySheetText,
};
