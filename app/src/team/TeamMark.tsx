import { Action } from '../controls/Action';
import type { SiteEntry } from '../storage/records';
import { shareSite } from '../storage/siteStore';
import styles from './team.module.css';
import { useTeamStatus } from './teamStatus';

type Props = { readonly entry: SiteEntry; readonly onShared: () => void };

/** In the list of sites: that the team has a site, or the way to give it to the team. */
export function TeamMark({ entry, onShared }: Props) {
  const joined = useTeamStatus((s) => s.state !== 'none');
  if (!joined) return null;
  if (entry.team === true) return <span className={styles.badge}>Team</span>;
  return (
    <Action
      look="quiet"
      aria-label={`Share ${entry.name || 'the site without a name'} with the team`}
      onPress={() => void shareSite(entry.id).then(onShared, onShared)}
    >
      Share
    </Action>
  );
}
