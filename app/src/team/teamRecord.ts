import { database } from '../storage/database';
import type { StoredTeam } from '../storage/records';

/** The team that this device belongs to; null: none, or storage does not answer. */
export async function loadTeam(): Promise<StoredTeam | null> {
  try {
    return (await (await database()).get('teams', 'team')) ?? null;
  } catch {
    return null;
  }
}

export async function saveTeam(team: StoredTeam): Promise<void> {
  await (await database()).put('teams', team);
}

/** Forgets the team, its password, and how far its sites have been exchanged. The sites stay. */
export async function forgetTeam(): Promise<void> {
  const tx = (await database()).transaction(['teams', 'entries', 'stamps'], 'readwrite');
  const entries = tx.objectStore('entries');
  for (let at = await entries.openCursor(); at !== null; at = await at.continue()) {
    const { team: _, exchangedSeq: __, ...entry } = at.value;
    await at.update(entry);
  }
  await Promise.all([tx.objectStore('teams').clear(), tx.objectStore('stamps').clear(), tx.done]);
}

/** The name of the device's replica of a team's database: another for each address. */
export function replicaName(url: string): string {
  return `footmark-team-${encodeURIComponent(url)}`;
}
