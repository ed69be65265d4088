import type { Point } from '@footmark/geometry';
import { z } from 'zod';
import { type Feature, feature } from '../document/feature';
import { type Path, path } from '../document/path';
import { refKey } from '../document/pointOwners';
import type { Site } from '../document/site';
import { type Ref, refsOfSpot, type Spot } from '../document/spot';
import type { Edit } from './edit';
import { freeName, takenNames } from './freeName';
import { mapSpotRefs } from './mapSpotRefs';
import { releaseReadings } from './releaseReadings';
import { releaseFrom } from './vertexEdits';

/** Features and paths without their site: what they measure from each other goes along, the rest has become places. */
export type LooseThings = { readonly features: readonly Feature[]; readonly paths: readonly Path[] };

/** Validator of loose things, for those that come from a clipboard. Their refs are checked when they are put in. */
export const looseThings = z.strictObject({
  features: z.array(feature).max(20_000),
  paths: z.array(path).max(500),
}) as unknown as z.ZodType<LooseThings>; // the feature's own type is lost in an array of it

/**
 * Takes copies of things out of a site. The copy of a locate belongs to no reading. Points measured from things that stay behind become places by eye where they are now
 * (`places`, by `of/at`).
 */
export function copyThings(
  site: Site,
  ids: readonly string[],
  places: ReadonlyMap<string, { at: Point }>,
): LooseThings {
  const chosen = new Set(ids);
  const only: Site = {
    ...site,
    features: site.features.filter((f) => chosen.has(f.id)),
    paths: site.paths.filter((p) => chosen.has(p.id)),
  };
  const freed = releaseFrom(only, (ref) => !chosen.has(ref.of), places);
  return { features: releaseReadings(freed, () => true).features, paths: freed.paths };
}

/**
 * Puts loose things into a site, moved by a displacement (m). `ids` gives each its new id; a name that
 * is taken there gets a number. Throws on a thing
 * without a new id, and on a ref that leads out of the loose things.
 */
export const pasteThings: Edit<{ things: LooseThings; ids: ReadonlyMap<string, string>; by: Point }> = (
  site,
  { things, ids, by },
) => {
  const idOf = (old: string) => {
    const found = ids.get(old);
    if (found === undefined) throw new Error(`no new id for ${old}`);
    return found;
  };
  const refOf = (ref: Ref): Ref => ({ of: idOf(ref.of), at: ref.at });
  const spotOf = (spot: Spot): Spot => mapSpotRefs(movedSpot(spot, by), refOf);
  const taken = takenNames(site);
  const nameOf = (wanted: string): string => {
    const name = freeName(taken, wanted);
    taken.add(name);
    return name;
  };
  return {
    ...site,
    features: [
      ...site.features,
      ...things.features.map(
        (f): Feature => ({
          ...f,
          id: idOf(f.id),
          name: nameOf(f.name),
          vertices: f.vertices.map((v) => ({ ...v, spot: spotOf(v.spot) })),
        }),
      ),
    ],
    paths: [
      ...site.paths,
      ...things.paths.map((p) => ({
        ...p,
        id: idOf(p.id),
        name: nameOf(p.name),
        vertices: p.vertices.map((v) => ({ ...v, spot: spotOf(v.spot) })),
      })),
    ],
  };
};

/** A spot moved by a displacement: what is told by measurements from other points moves with them. */
function movedSpot(spot: Spot, by: Point): Spot {
  switch (spot.by) {
    case 'finger':
    case 'coordinates':
      return { ...spot, x: spot.x + by.x, y: spot.y + by.y };
    default:
      return spot;
  }
}

/** Whether every point that loose things name is one of theirs. */
export function isSelfContained(things: LooseThings): boolean {
  const owners = [...things.features, ...things.paths];
  const known = new Set(owners.flatMap((o) => o.vertices.map((v) => refKey({ of: o.id, at: v.id }))));
  return owners.every((o) =>
    o.vertices.every((v) => refsOfSpot(v.spot).every((ref) => known.has(refKey(ref)))),
  );
}
