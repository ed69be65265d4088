import { describe, expect, it } from 'vitest';
import { linkProblemSamples } from '../testing/linkProblemSamples';
import { linkProblemText } from './linkProblemText';

describe('what is the matter with a link', () => {
  it.each(Object.values(linkProblemSamples))('$code: a sentence, and the way out', (problem) => {
    const { text, cure } = linkProblemText(problem);
    expect(text).toMatch(/^[A-Z].*\.$/);
    expect(cure).toMatch(/^[A-Z].*\.$/);
  });

  it('says how much is missing, how long is too long, and how many codes there would be', () => {
    expect(linkProblemText(linkProblemSamples['cut-off']).text).toContain('50 %');
    expect(linkProblemText(linkProblemSamples['too-long']).text).toContain('1,234,567 characters');
    expect(linkProblemText(linkProblemSamples['too-many-symbols']).text).toContain('22 QR codes');
  });

  it.each(['newer-coding', 'newer-version'] as const)(
    '%s: says that the program is the older one',
    (code) => {
      expect(linkProblemText(linkProblemSamples[code]).text).toBe(
        'The link was made by a newer version of Footmark.',
      );
    },
  );

  it('says the places in a site that is not sound', () => {
    expect(linkProblemText(linkProblemSamples['not-a-site']).problems).toEqual([
      'runs[0].path: there is no path "p9"',
    ]);
  });
});
