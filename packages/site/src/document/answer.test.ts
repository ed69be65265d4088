import { describe, expect, it } from 'vitest';
import { answerOf, find, given } from '../testing/foundYard';
import { MOST_ANSWER_CHARACTERS, openAnswer, readAnswer, writeAnswer } from './answer';

const answer = answerOf({ found: [find({ id: 'f1', given })] });

describe('a crew’s answer', () => {
  it('is read back as it was written', () => {
    expect(readAnswer(writeAnswer(answer))).toEqual({ ok: true, answer });
  });

  it.each([
    ['a site', { format: 'footmark-site', version: 3 }, { code: 'not-an-answer' }],
    ['nothing', null, { code: 'not-an-answer' }],
    ['of a newer version', { ...answer, version: 2, more: [] }, { code: 'newer-version', version: 2 }],
    [
      'with a field too many',
      { ...answer, extra: 1 },
      { code: 'invalid', problems: [{ code: 'unknown-field' }] },
    ],
    ['of no site', { ...answer, site: undefined }, { code: 'invalid', problems: [{ path: ['site'] }] }],
    ['with a hash that is none', { ...answer, madeFrom: { version: 3, hash: '<b>' } }, { code: 'invalid' }],
    ['with a language that is none', { ...answer, language: 'en"><' }, { code: 'invalid' }],
    [
      'with two records of one id',
      { ...answer, found: [...answer.found, ...answer.found] },
      { code: 'same-id', id: 'f1' },
    ],
    [
      'with an offset of a thousand miles',
      { ...answer, found: [find({ id: 'f1', where: { by: 'paint', along: 1.6e6, right: 0 } })] },
      { code: 'invalid', problems: [{ code: 'wrong-value', path: ['found', 0, 'where', 'along'] }] },
    ],
    [
      'with more records than anyone digs',
      { ...answer, found: Array.from({ length: 2001 }, (_, i) => find({ id: `f${i}` })) },
      { code: 'invalid' },
    ],
  ])('%s is refused', (_, value, failure) => {
    expect(openAnswer(value)).toMatchObject({ ok: false, failure });
  });

  it('that is no JSON or too long is refused before it is looked at', () => {
    expect(readAnswer('{"format": ')).toMatchObject({ ok: false, failure: { code: 'not-json' } });
    expect(readAnswer(' '.repeat(MOST_ANSWER_CHARACTERS + 1))).toMatchObject({
      ok: false,
      failure: { code: 'too-large', most: MOST_ANSWER_CHARACTERS },
    });
  });
});
