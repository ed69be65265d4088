import { database } from '../storage/database';
import { runTeam } from './teamEngine';
import { loadTeam } from './teamRecord';
import { TEAM_CHANNEL, type TeamNews } from './teamStatus';

// one worker of all tabs exchanges; another takes over when its tab is closed
void navigator.locks.request(TEAM_CHANNEL, async () => {
  const team = await loadTeam();
  if (team === null) return;
  const channel = new BroadcastChannel(TEAM_CHANNEL);
  await runTeam(await database(), team, (status) => {
    const news: TeamNews = { is: 'status', status };
    channel.postMessage(news);
  });
});
