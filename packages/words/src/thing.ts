import {
  type Dig,
  type Feature,
  kindSpec,
  type Path,
  type Reading,
  type Run,
  type Site,
  type Target,
} from '@footmark/site';

/** What a target is in a site. `gone`: it is not there any more. A letter is that of a point of several. */
export type Thing =
  | { readonly is: 'site' }
  | { readonly is: 'gone'; readonly id: string }
  | { readonly is: 'feature'; readonly feature: Feature; readonly point: FeaturePoint | null }
  | { readonly is: 'path'; readonly path: Path; readonly letter: string | null }
  | { readonly is: 'run'; readonly run: Run }
  | { readonly is: 'dig'; readonly dig: Dig }
  | { readonly is: 'set-out'; readonly number: number; readonly path: string }
  | { readonly is: 'reading'; readonly run: Run; readonly reading: Reading };

type FeaturePoint = { readonly of: 'corner' | 'point'; readonly letter: string };

export function thingOf(target: Target, site: Site): Thing {
  switch (target.kind) {
    case 'site':
      return { is: 'site' };
    case 'feature': {
      const feature = site.features.find((f) => f.id === target.id);
      return feature === undefined
        ? { is: 'gone', id: target.id }
        : { is: 'feature', feature, point: pointOf(feature, target.vertex) };
    }
    case 'path': {
      const path = site.paths.find((p) => p.id === target.id);
      if (path === undefined) return { is: 'gone', id: target.id };
      return { is: 'path', path, letter: target.vertex === undefined ? null : letterOf(target.vertex) };
    }
    case 'run': {
      const run = site.runs.find((r) => r.id === target.id);
      return run === undefined ? { is: 'gone', id: target.id } : { is: 'run', run };
    }
    case 'dig': {
      const dig = site.digging.digs.find((d) => d.id === target.id);
      return dig === undefined ? { is: 'gone', id: target.id } : { is: 'dig', dig };
    }
    case 'set-out':
      return { is: 'set-out', number: target.number, path: target.path };
    case 'reading': {
      const run = site.runs.find((r) => r.id === target.run);
      const reading = run?.readings.find((r) => r.id === target.id);
      return run === undefined || reading === undefined
        ? { is: 'gone', id: target.id }
        : { is: 'reading', run, reading };
    }
  }
}

/** A point of a feature, or nothing where it has only one. */
export function pointOf(feature: Feature, vertex: string | undefined): FeaturePoint | null {
  if (vertex === undefined || feature.vertices.length < 2) return null;
  return { of: kindSpec(feature.kind).shape === 'area' ? 'corner' : 'point', letter: letterOf(vertex) };
}

/** A point by the key `of/at` that findings carry. */
export function targetOfKey(key: string, site: Site): Target {
  const [of = '', at = ''] = key.split('/');
  return targetOfPoint({ of, at }, site);
}

/** A point of a pipe or of something in the yard. */
export function targetOfPoint({ of, at }: { readonly of: string; readonly at: string }, site: Site): Target {
  return { kind: site.paths.some((p) => p.id === of) ? 'path' : 'feature', id: of, vertex: at };
}

/**
 * A name as findings carry it, a thing's name or id and then the letter of its point where it has several. What has no name of its
 * own comes back as the thing, with ` B` or nothing for its point; a name that people gave as it is.
 */
export function carriedThing(
  carried: string,
  site: Site,
): { readonly thing: Feature | Path; readonly point: string } | null {
  const [, id = carried, point = ''] = /^(\S+)( \S+)?$/.exec(carried) ?? [];
  const thing =
    site.features.find((f) => f.id === id && f.name === '') ??
    site.paths.find((p) => p.id === id && p.name === '');
  return thing === undefined ? null : { thing, point };
}

/** Whether what is taped for a reading is the paint beside its mark. */
export function isPaintBeside(at: Target, site: Site): boolean {
  const thing = thingOf(at, site);
  return thing.is === 'reading' && thing.reading.offset !== undefined;
}

function letterOf(vertex: string): string {
  return vertex.toUpperCase();
}
