import { type EditProblem, refsOfSpot, type Site, type Spot, soundEdit } from '@footmark/site';
import { changesBetween } from './changesBetween';
import type { OtherVersion } from './mergeParts';
import { type Place, placeOfPath, valueAt, withVersion } from './place';
import { sameValue } from './sameValue';

/** Each step takes back or brings back one thing; a site that needs more is left as it is on my side. */
const MOST_STEPS = 100;

type Merged = { readonly site: Site; readonly others: readonly OtherVersion[] };

/**
 * A merged site as one that can be kept: what was taken away on one side and is needed on the other comes back, and a change of theirs that does
 * not go with mine waits beside the site. Where that does not help, all of theirs waits.
 */
export function makeSound(base: Site | null, mine: Site, theirs: Site, merged: Merged): Merged {
  let { site } = merged;
  const others = [...merged.others];
  for (let step = 0; step < MOST_STEPS; step++) {
    const sound = soundEdit(mine, site);
    if (sound.ok) return { site, others };
    const change = firstOf(sound.problems, (problem) => cure(problem, site, mine, theirs));
    if (change === null) break;
    site = withVersion(site, change.place, change.kept);
    others.push({ place: change.place, other: change.other ?? null });
  }
  // where no base is known, what theirs does not have is not taken away by it
  const theirChanges = changesBetween(base ?? mine, theirs).filter(
    ({ after }) => base !== null || after !== undefined,
  );
  return {
    site: mine,
    others: theirChanges.map(({ place, after }) => ({ place, other: after ?? null })),
  };
}

type Cure = { readonly place: Place; readonly kept: unknown; readonly other: unknown };

function cure(problem: EditProblem, site: Site, mine: Site, theirs: Site): Cure | null {
  const needed = 'name' in problem ? placesNamed(problem.code, problem.name) : [];
  for (const place of needed) {
    if (valueAt(site, place) !== undefined) continue;
    const kept = valueAt(theirs, place) ?? valueAt(mine, place);
    if (kept !== undefined) return { place, kept, other: undefined };
  }
  const holder = placeOfPath(site, problem.path);
  const ring = problem.code === 'depends-on-itself' || problem.code === 'joins-itself';
  const through = ring ? ownersBehind(site, problem.name) : [];
  for (const place of [...(holder === null ? [] : [holder]), ...needed, ...through]) {
    const [now, kept] = [valueAt(site, place), valueAt(mine, place)];
    if (!sameValue(now, kept)) return { place, kept, other: now };
  }
  return null;
}

/** The things that a thing is measured from, and what those are, the nearest first; `name` names it or a point of it. */
function ownersBehind(site: Site, name: string): readonly Place[] {
  const owners = new Map<string, { readonly place: Place; readonly spots: readonly Spot[] }>();
  for (const list of ['features', 'paths'] as const)
    for (const { id, vertices } of site[list])
      owners.set(id, { place: [list, id], spots: vertices.map((v) => v.spot) });
  const met = new Set([name.split('/')[0] ?? '']);
  for (const id of met) // grows while it is walked
    for (const spot of owners.get(id)?.spots ?? []) for (const { of } of refsOfSpot(spot)) met.add(of);
  return [...met].flatMap((id) => {
    const owner = owners.get(id);
    return owner === undefined ? [] : [owner.place];
  });
}

/** Where the thing would be that a problem misses by name. */
function placesNamed(code: EditProblem['code'], name: string): readonly Place[] {
  const [of = '', at = ''] = name.split('/');
  switch (code) {
    case 'unknown-point':
    case 'depends-on-itself':
      return [
        ['features', of],
        ['paths', of],
      ];
    case 'unknown-entry':
      return [['features', name]];
    case 'unknown-path':
    case 'joins-itself':
      return [['paths', name]];
    case 'unknown-visit':
      return [['visits', name]];
    case 'unknown-reading':
      return [
        ['runs', of],
        ['runs', of, 'readings', at],
      ];
    default:
      return [];
  }
}

function firstOf<Item, Found>(items: readonly Item[], find: (item: Item) => Found | null): Found | null {
  for (const item of items) {
    const found = find(item);
    if (found !== null) return found;
  }
  return null;
}
