import type { Units } from '@footmark/site';
import type { ArcProblem, SpotProblem } from '../measureProblem';
import { angleText, lengthText } from '../measureText';

/** What contradicts itself in an arc that is told by its radius, length, angle and chord. */
export function arcProblemText(problem: ArcProblem, units: Units): string {
  switch (problem.code) {
    case 'not-positive':
      return 'Radius, length and angle are all above nothing.';
    case 'past-full-circle':
      return `This arc would turn through ${angleText(problem.given)}, a full circle and more. Check its length and radius.`;
    case 'delta-against-arc-length':
      return `Length and angle contradict each other: with this radius and angle the arc is ${lengthText(problem.computed, units)} long, not ${lengthText(problem.given, units)}.`;
    case 'chord-past-diameter':
    case 'chord-against-delta':
    case 'chord-against-arc-length':
      return `The chord contradicts the rest: it would be ${lengthText(problem.computed, units)}, not ${lengthText(problem.given, units)}.`;
  }
}

/** Why measurements from two points lead to no place. */
export function spotProblemText(problem: SpotProblem, units: Units): string {
  switch (problem.code) {
    case 'same-reference':
      return 'Both measurements start from the same place. Choose another point.';
    case 'too-short':
      return `These tapes do not reach each other: ${lengthText(problem.gap, units)} is missing between them. Check both lengths and where they start.`;
    case 'too-long':
      return `One tape is too long for the other: they miss by ${lengthText(problem.gap, units)}. Check both lengths and where they start.`;
  }
}
