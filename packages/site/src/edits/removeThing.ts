import type { Point } from '@footmark/geometry';
import type { Digging } from '../document/dig';
import type { Edit } from './edit';
import { unknown } from './edit';
import { releaseReadings } from './releaseReadings';
import { releaseSetAside } from './releaseSetAside';
import { releaseFrom } from './vertexEdits';

/**
 * Takes a feature, a path or a run out of the site. Points measured from it stay where they are (`places`, by `of/at`), as put
 * there by eye; runs that went in there or along it keep their readings and lose the name; with a run go its pairs, and with each what
 * was set aside of it.
 */
export const removeThing: Edit<{ id: string; places: ReadonlyMap<string, { at: Point }> }> = (
  site,
  { id, places },
) => {
  const known = [...site.features, ...site.paths, ...site.runs].some((thing) => thing.id === id);
  if (!known) return unknown('thing', id);
  const freed = releaseFrom(site, (ref) => ref.of === id, places);
  return releaseSetAside({
    ...freed,
    paths: freed.paths.filter((p) => p.id !== id),
    ...releaseReadings(
      {
        ...freed,
        features: freed.features.filter((f) => f.id !== id),
        digging: withoutTrenches(freed.digging, id),
      },
      (ref) => ref.run === id,
    ),
    runs: freed.runs
      .filter((r) => r.id !== id)
      .map((r) =>
        r.entry !== id && r.path !== id && !r.branches.includes(id)
          ? r
          : {
              ...r,
              entry: r.entry === id ? null : r.entry,
              path: r.path === id ? null : r.path,
              branches: r.branches.filter((b) => b !== id),
            },
      ),
  });
};

function withoutTrenches(digging: Digging, path: string): Digging {
  const digs = digging.digs.filter((dig) => dig.is !== 'trench' || dig.path !== path);
  return digs.length === digging.digs.length ? digging : { ...digging, digs };
}
