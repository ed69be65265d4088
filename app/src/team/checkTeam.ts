import type { StoredTeam } from '../storage/records';
import { rightOf } from './teamAddress';

export type TeamCheck = 'fits' | 'refused' | 'missing' | 'no-answer' | 'not-a-database';

/** Asks the address whether a database is there that lets this user in. */
export async function checkTeam(team: Pick<StoredTeam, 'url' | 'user' | 'password'>): Promise<TeamCheck> {
  let answer: Response;
  try {
    answer = await fetch(team.url, {
      headers: { Accept: 'application/json', ...(team.user === '' ? {} : { Authorization: rightOf(team) }) },
      credentials: 'omit',
      referrerPolicy: 'no-referrer',
    });
  } catch {
    return 'no-answer';
  }
  if (answer.status === 401 || answer.status === 403) return 'refused';
  if (answer.status === 404) return 'missing';
  const info: unknown = await answer.json().catch(() => null);
  return answer.ok && typeof info === 'object' && info !== null && 'db_name' in info
    ? 'fits'
    : 'not-a-database';
}
