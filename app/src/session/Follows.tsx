import type { ReactNode } from 'react';
import { FollowedSite, useSite } from './siteSession';
import { useLagging } from './useLagging';
import { useWorkbench } from './workbench';

type Props = {
  /** Whether the edit that is being rendered must show in it with the plan. */
  readonly atOnce?: () => boolean;
  /** The same at every render. */
  readonly children: ReactNode;
};

/** What is in it shows an edit a moment after the plan does. */
export function Follows({ atOnce, children }: Props) {
  const followed = useLagging(useSite(), useWorkbench(), atOnce?.());
  return <FollowedSite value={followed}>{children}</FollowedSite>;
}
