import type { Site } from '@footmark/site';
import { create } from 'zustand';

type Looking = {
  /** How the open site was; shown in its place, and not to be changed. Null: it is shown as it is. */
  readonly site: Site | null;
  /** When that was, milliseconds since 1970. */
  readonly at: number;
};

/** Which earlier version of the open site is looked at. */
export const useLooking = create<Looking>()(() => ({ site: null, at: 0 }));

export function lookAt(site: Site, at: number): void {
  useLooking.setState({ site, at });
}

/** Goes back to the site as it is. */
export function stopLooking(): void {
  if (useLooking.getState().site !== null) useLooking.setState({ site: null });
}
