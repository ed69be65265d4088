import type { LinkProblem } from '@footmark/link';

/** One problem of a link of each code; a code without one does not compile. */
export const linkProblemSamples: {
  readonly [Code in LinkProblem['code']]: Extract<LinkProblem, { code: Code }>;
} = {
  'not-a-link': { code: 'not-a-link' },
  'too-long': { code: 'too-long', characters: 1_234_567, most: 200_000 },
  'cut-off': { code: 'cut-off', have: 450, of: 900 },
  damaged: { code: 'damaged' },
  'newer-coding': { code: 'newer-coding', coding: 9 },
  'newer-version': { code: 'newer-version', version: 9, known: 2 },
  'other-shape': { code: 'other-shape', version: 2 },
  'other-kind': { code: 'other-kind', kind: 7 },
  'not-unpacked': { code: 'not-unpacked' },
  'not-a-site': {
    code: 'not-a-site',
    because: {
      code: 'invalid',
      problems: [{ code: 'unknown-path', path: ['runs', 0, 'path'], detail: 'p9' }],
      more: 0,
    },
  },
  'not-an-answer': { code: 'not-an-answer', because: { code: 'not-an-answer' } },
  'too-large': { code: 'too-large' },
  'too-many-symbols': { code: 'too-many-symbols', needed: 22 },
  'other-set': { code: 'other-set' },
};
