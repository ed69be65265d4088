import { type ReactNode, useDeferredValue } from 'react';
import { FollowedSite, useSite } from './siteSession';

/** What is in it shows an edit a moment after the plan does, which need not wait for it. `children` is the same at every render. */
export function Follows({ children }: { readonly children: ReactNode }) {
  const site = useDeferredValue(useSite());
  return <FollowedSite value={site}>{children}</FollowedSite>;
}
