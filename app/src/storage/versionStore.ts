import { type Opened, openSiteValue } from '@footmark/site';
import { database } from './database';

/** A version of a site that is put by: the write that it was, and when that was made (ms since 1970). */
export type VersionKey = { readonly seq: number; readonly at: number };

/** The versions of a site that are put by, the last first. */
export async function listVersions(of: string): Promise<readonly VersionKey[]> {
  const keys = await (await database()).getAllKeys('versions', IDBKeyRange.bound([of], [of, []]));
  return keys.map(([, seq, at]) => ({ seq, at })).reverse();
}

/** Opens a version as a file is opened; null when it has given way meanwhile. */
export async function loadVersion(of: string, { seq, at }: VersionKey): Promise<Opened | null> {
  const found = await (await database()).get('versions', [of, seq, at]);
  return found === undefined ? null : openSiteValue(found.site);
}
