import { type Answer, openAnswer } from '@footmark/site';
import { database } from './database';

/** Writes what a crew has done so far. Resolves when the device has it. */
export async function saveAnswer(answer: Answer, now: number): Promise<void> {
  const tx = (await database()).transaction('answers', 'readwrite', { durability: 'strict' });
  await Promise.all([tx.store.put({ id: answer.id, site: answer.site, answer, savedAt: now }), tx.done]);
}

/** The answer on a site that was saved last, checked as a file would be checked; null where there is none that is sound. */
export async function answerOfSite(site: string): Promise<Answer | null> {
  const all = (await (await database()).getAll('answers')).filter((stored) => stored.site === site);
  const [latest] = all.sort((a, b) => b.savedAt - a.savedAt);
  const opened = latest === undefined ? null : openAnswer(latest.answer);
  return opened?.ok === true ? opened.answer : null;
}
