/** A version is put by with the first write after this long (ms). */
export const VERSION_SPACING_MS = 10 * 60_000;
/** So many versions of a site are kept. */
export const MOST_VERSIONS = 40;
/** The last so many are never thinned out. */
const LAST_KEPT = 10;

/** Whether the state before a write is to be put by. A clock that was set back makes it due, too. */
export function isVersionDue(versionedAt: number | undefined, now: number): boolean {
  return versionedAt === undefined || Math.abs(now - versionedAt) >= VERSION_SPACING_MS;
}

/**
 * Which of a site's versions, the oldest first, give way so that `most` stay: each time the one that leaves the shortest gap in time
 * between its neighbours. The first and the last ones stay.
 */
export function versionsToDrop<Version extends { readonly at: number }>(
  versions: readonly Version[],
  most = MOST_VERSIONS,
): readonly Version[] {
  const kept = [...versions];
  const dropped: Version[] = [];
  while (kept.length > most) {
    let [shortest, at] = [Number.POSITIVE_INFINITY, 1];
    for (let i = 1; i < Math.max(2, kept.length - LAST_KEPT); i++) {
      const gap = Math.abs((kept[i + 1]?.at ?? 0) - (kept[i - 1]?.at ?? 0));
      if (gap < shortest) [shortest, at] = [gap, i];
    }
    dropped.push(...kept.splice(at, 1));
  }
  return dropped;
}
