import type { LegProblem } from '@footmark/site';

/** Why the length of a leg cannot be changed as asked, and what can. */
export const legProblemTexts: Record<LegProblem, string> = {
  held: 'The end that would move is held by its own measurements. Keep the other end, or correct those measurements.',
  curve: 'A curve gets its length from its radius and angle.',
  closes: 'This side is what the others leave. Change one of them, or keep the other end.',
  balanced:
    'This outline is balanced, so its sides are not as long as they were measured. Switch the balance off first, or correct a measurement.',
};
