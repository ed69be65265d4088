import type { OtherVersion } from '@footmark/merge';
import { create } from 'zustand';

/** The versions of things that wait for a choice, by the site that they are of; sites that are open or not yet written. */
export const useOtherVersions = create<ReadonlyMap<string, readonly OtherVersion[]>>()(() => new Map());

const NONE: readonly OtherVersion[] = [];

export function otherVersionsOf(site: string): readonly OtherVersion[] {
  return useOtherVersions.getState().get(site) ?? NONE;
}

export function setOtherVersions(site: string, others: readonly OtherVersion[]): void {
  useOtherVersions.setState((all) => new Map(all).set(site, others), true);
}

/** What waits of a site, in a component. */
export function useOthersOf(site: string): readonly OtherVersion[] {
  return useOtherVersions((all) => all.get(site) ?? NONE);
}
