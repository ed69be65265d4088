import type { LinkProblem } from '@footmark/link';
import { describe, expect, it } from 'vitest';
import { linkProblemText } from './linkProblemText';

const examples: { readonly [Code in LinkProblem['code']]: Extract<LinkProblem, { code: Code }> } = {
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
  'not-an-answer': { code: 'not-an-answer', because: { code: 'same-id', id: 'w1' } },
  'too-large': { code: 'too-large' },
  'too-many-symbols': { code: 'too-many-symbols', needed: 22 },
  'other-set': { code: 'other-set' },
};

describe('what is the matter with a link', () => {
  it.each(Object.values(examples))('$code: a sentence, and the way out', (problem) => {
    const { text, cure } = linkProblemText(problem);
    expect(text).toMatch(/^[A-Z].*\.$/);
    expect(cure).toMatch(/^[A-Z].*\.$/);
  });

  it('says how much is missing, how long is too long, and how many codes there would be', () => {
    expect(linkProblemText(examples['cut-off']).text).toContain('50 %');
    expect(linkProblemText(examples['too-long']).text).toContain('1,234,567 characters');
    expect(linkProblemText(examples['too-many-symbols']).text).toContain('22 QR codes');
  });

  it.each(['newer-coding', 'newer-version'] as const)(
    '%s: says that the program is the older one',
    (code) => {
      expect(linkProblemText(examples[code]).text).toBe('The link was made by a newer version of Footmark.');
    },
  );

  it('says the places in a site that is not sound', () => {
    expect(linkProblemText(examples['not-a-site']).problems).toEqual(['runs[0].path: there is no path "p9"']);
  });
});
