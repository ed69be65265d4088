import {
  type Derived,
  dependsOn,
  type FeatureLayer,
  isPath,
  kindSpec,
  type PointOwner,
  pointOwners,
  type Ref,
  refKey,
  type Site,
} from '@footmark/site';
import type { Option } from '../controls/Choice';
import { words } from '../words';

/** The points that a measurement can start from: all that have a place and are not themselves measured from `self`. */
export function pointChoices(site: Site, derived: Derived, self: Ref | null): readonly Option<string>[] {
  const owners = [...pointOwners(site)].sort((a, b) => rankOf(a) - rankOf(b));
  return owners.flatMap((owner) =>
    owner.vertices.flatMap((v) => {
      const ref = { of: owner.id, at: v.id };
      const free = self === null || !dependsOn(site, ref, self);
      return free && derived.points.has(refKey(ref)) ? [{ id: refKey(ref), name: pointName(site, ref) }] : [];
    }),
  );
}

/** What is taped from most comes first. */
const RANK: readonly FeatureLayer[] = [
  'buildings',
  'drain',
  'survey',
  'services',
  'trees',
  'structures',
  'land',
  'pavement',
  'notes',
];

function rankOf(owner: PointOwner): number {
  return isPath(owner) ? RANK.length : RANK.indexOf(kindSpec(owner.kind).layer);
}

/** What people call a point. */
export function pointName(site: Site, ref: Ref): string {
  const kind = site.paths.some((p) => p.id === ref.of) ? 'path' : 'feature';
  return words.targetName({ kind, id: ref.of, vertex: ref.at }, site);
}

/** The point of a key `of/at`; ids hold no slash. */
export function refOfKey(key: string): Ref {
  const [of = '', at = ''] = key.split('/');
  return { of, at };
}
