import type { StoredTeam } from '../storage/records';
import { forgetTeam, loadTeam, replicaName, saveTeam } from './teamRecord';
import { NO_TEAM, TEAM_CHANNEL, type TeamNews, useTeamStatus } from './teamStatus';

let worker: Worker | null = null;
let channel: BroadcastChannel | null = null;

/** Begins to exchange with the team, if this device has one. Gives the team. */
export async function startTeam(): Promise<StoredTeam | null> {
  const team = await loadTeam();
  if (team === null) return null;
  if (channel === null) {
    channel = new BroadcastChannel(TEAM_CHANNEL);
    channel.onmessage = ({ data }: MessageEvent<TeamNews>) => {
      if (data.is === 'left') stop();
      else useTeamStatus.setState(data.status);
    };
  }
  if (worker === null) {
    useTeamStatus.setState({ ...NO_TEAM, state: 'starting' });
    worker = new Worker(new URL('./teamWorker.ts', import.meta.url), { type: 'module' });
  }
  return team;
}

/** Joins a team, or goes on with it under another name or choice. */
export async function joinTeam(team: StoredTeam): Promise<void> {
  stop();
  await saveTeam(team);
  await startTeam();
}

/** Leaves the team in every tab: its password and the replica go, the sites stay on this device. */
export async function leaveTeam(): Promise<void> {
  const team = await loadTeam();
  const news: TeamNews = { is: 'left' };
  channel?.postMessage(news);
  stop();
  await forgetTeam();
  // PouchDB's own name for what it stores
  if (team !== null) indexedDB.deleteDatabase(`_pouch_${replicaName(team.url)}`);
}

function stop(): void {
  worker?.terminate();
  worker = null;
  useTeamStatus.setState(NO_TEAM);
}
