import { type Answer, writeAnswer } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { newAnswer, withRecord } from '../answerEdits';
import { readAnswerFiles } from './readAnswerFiles';

const answer: Answer = withRecord(
  newAnswer({
    id: 'a1',
    site: 's1',
    madeFrom: { version: 3, hash: '0123456789abcdef' },
    by: '',
    language: 'en',
    at: '2026-05-20T12:00:00Z',
  }),
  {
    id: 'w1',
    about: { is: 'place' },
    state: 'found',
    by: '',
    at: '2026-05-20T12:00:00Z',
    note: '',
    photos: ['i1', 'i2'],
  },
);
const file = (name: string, text = '') => new File([text], name);
const json = file('answer.json', writeAnswer(answer));

describe('files that came back', () => {
  it('are the answer and the photos that it names, whatever else was chosen with them', async () => {
    const read = await readAnswerFiles([file('i1.jpg'), json, file('holiday.jpg')]);
    if (!read.ok) return expect.fail(read.failure.code);
    expect(read.opened.answer).toEqual(answer);
    expect([...read.opened.photos.keys()]).toEqual(['i1']);
  });

  it.each([
    ['no answer', [file('i1.jpg')], 'no-answer'],
    ['two answers', [json, file('other.json')], 'several'],
    ['no JSON', [file('answer.json', 'x')], 'not-json'],
    ['another file', [file('site.json', '{"format":"footmark-site"}')], 'not-an-answer'],
    ['too much', [file('answer.json', ' '.repeat(5_000_001))], 'too-large'],
  ])('with %s are refused', async (_, files, code) => {
    expect(await readAnswerFiles(files)).toMatchObject({ ok: false, failure: { code } });
  });
});
