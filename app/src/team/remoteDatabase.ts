import PouchDB from 'pouchdb-browser';
import type { StoredTeam } from '../storage/records';
import { rightOf } from './teamAddress';

/** What the server's answers tell: it let us in, it does not, or there is no such database. */
export type Heard = 'answer' | 'refused' | 'missing';

/** The team's database on its server. User and password go into a header of each request, nowhere else. */
export function remoteDatabase(team: StoredTeam, onHeard: (heard: Heard) => void): PouchDB {
  const { pathname } = new URL(team.url);
  return new PouchDB(team.url, {
    adapter: 'http',
    skip_setup: true,
    fetch: async (url, options) => {
      const headers = new Headers(options?.headers);
      if (team.user !== '') headers.set('Authorization', rightOf(team));
      const answer = await fetch(url, {
        ...options,
        headers,
        credentials: 'omit',
        referrerPolicy: 'no-referrer',
      });
      if (answer.status === 401 || answer.status === 403) onHeard('refused');
      // a checkpoint that is not there yet is no fault
      else if (answer.status === 404 && new URL(url).pathname.replace(/\/$/, '') === pathname)
        onHeard('missing');
      else if (answer.ok) onHeard('answer');
      return answer;
    },
  });
}
