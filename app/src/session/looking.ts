import type { Site } from '@footmark/site';
import { create } from 'zustand';

type Looking = {
  /** Another state of the open site; shown in its place, and not to be changed. Null: it is shown as it is. */
  readonly site: Site | null;
  /** What it is, as a heading has it. */
  readonly title: string;
  /** When that was, milliseconds since 1970; null: it is no earlier state, and not to be brought back as a whole. */
  readonly at: number | null;
};

/** Which other version of the open site is looked at. */
export const useLooking = create<Looking>()(() => ({ site: null, title: '', at: null }));

export function lookAt(site: Site, title: string, at: number | null): void {
  useLooking.setState({ site, title, at });
}

/** Goes back to the site as it is. */
export function stopLooking(): void {
  if (useLooking.getState().site !== null) useLooking.setState({ site: null });
}
