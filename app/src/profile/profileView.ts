import type { Derived } from '@footmark/site';
import { create } from 'zustand';
import { useWorkbench } from '../session/workbench';

type ProfileView = {
  readonly isOpen: boolean;
  /** The pipe that was looked at last; null before any was. */
  readonly path: string | null;
  readonly asTable: boolean;
};

/** Whether the profile lies open under the plan, and of which pipe. Begins anew with each site that is opened. */
export const useProfileView = create<ProfileView>()(() => ({ isOpen: false, path: null, asTable: false }));

/** A screen with room for plan, profile and card at once. */
const ROOMY = '(min-width: 1000px) and (min-height: 700px)';
const NARROW = '(max-width: 999px)';

/** With fewer known levels than this a profile has nothing to say unasked. */
const WORTH_A_LOOK = 2;

/** For a site that was just opened: the profile lies open where there is room for it and something to see. */
export function startProfile({ profiles }: Derived): void {
  const telling = [...profiles.values()].some((profile) => profile.points.length >= WORTH_A_LOOK);
  useProfileView.setState({
    isOpen: telling && window.matchMedia(ROOMY).matches,
    path: null,
    asTable: false,
  });
}

/** Opens the profile, of a pipe or of the one that was seen last. On a narrow screen the card makes room for it. */
export function openProfile(path?: string): void {
  useProfileView.setState(path === undefined ? { isOpen: true } : { isOpen: true, path });
  if (window.matchMedia(NARROW).matches) useWorkbench.setState({ cardHeight: 'low' });
}

export function closeProfile(): void {
  useProfileView.setState({ isOpen: false });
}

export function toggleProfile(): void {
  if (useProfileView.getState().isOpen) closeProfile();
  else openProfile();
}
