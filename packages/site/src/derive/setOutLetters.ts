import type { Site } from '../document/site';
import { letters } from '../edits/vertexEdits';

/** A run's letters are up to three as well. */
const MOST_INITIALS = 3;

/** What a pipe without a name is set out as: a proposed one. */
const NAMELESS = 'P';

/**
 * The letters that each path's points are painted with: the initials of its name. Letters of a run, or of a path before, are left to it and get
 * another letter behind them, so that `N-3` and the mark `N3` never stand in one yard. Proposed paths come first.
 */
export function setOutLetters({ paths, runs }: Pick<Site, 'paths' | 'runs'>): ReadonlyMap<string, string> {
  const taken = new Set<string>(runs.map((run) => run.letter));
  const proposedFirst = paths.toSorted(
    (a, b) => Number(b.state === 'proposed') - Number(a.state === 'proposed'),
  );
  return new Map(
    proposedFirst.map((path) => {
      const own = freeLetters(initialsOf(path.name), taken);
      taken.add(own);
      return [path.id, own];
    }),
  );
}

function initialsOf(name: string): string {
  const words = name.normalize('NFD').match(/\p{L}[\p{L}\p{M}]*/gu) ?? [];
  const initials = words.map((word) => word.charAt(0).toUpperCase()).filter((c) => /^[A-Z]$/.test(c));
  return initials.slice(0, MOST_INITIALS).join('') || NAMELESS;
}

function freeLetters(initials: string, taken: ReadonlySet<string>): string {
  if (!taken.has(initials)) return initials;
  // B for the second that would be called so
  for (let n = 1; ; n++) {
    const longer = initials + letters(n);
    if (!taken.has(longer)) return longer;
  }
}
