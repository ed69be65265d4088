import { type Answer, type AnswerFailure, MOST_ANSWER_CHARACTERS, readAnswer } from '@footmark/site';

/** What came back: the answer, and the photos that came along, by their ids. */
export type OpenedAnswerFiles = { readonly answer: Answer; readonly photos: ReadonlyMap<string, File> };

export type AnswerFilesFailure =
  | AnswerFailure
  | { readonly code: 'no-answer' }
  | { readonly code: 'several' };

/** Reads an answer's file with the photos that were chosen together with it. A file that is neither is left alone. */
export async function readAnswerFiles(
  files: readonly File[],
): Promise<
  | { readonly ok: true; readonly opened: OpenedAnswerFiles }
  | { readonly ok: false; readonly failure: AnswerFilesFailure }
> {
  const texts = files.filter((file) => !/\.(jpe?g|png|webp|gif)$/i.test(file.name));
  const [text] = texts;
  if (text === undefined) return { ok: false, failure: { code: 'no-answer' } };
  if (texts.length > 1) return { ok: false, failure: { code: 'several' } };
  if (text.size > MOST_ANSWER_CHARACTERS) {
    return { ok: false, failure: { code: 'too-large', characters: text.size, most: MOST_ANSWER_CHARACTERS } };
  }
  const opened = readAnswer(await text.text());
  if (!opened.ok) return opened;
  const named = new Set(opened.answer.found.flatMap(({ photos }) => photos));
  const photos = files.flatMap((file) => {
    const id = file.name.replace(/\.[a-z]+$/i, '');
    return named.has(id) ? [[id, file] as const] : [];
  });
  return { ok: true, opened: { answer: opened.answer, photos: new Map(photos) } };
}
