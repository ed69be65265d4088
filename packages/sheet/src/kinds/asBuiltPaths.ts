import type { Derived } from '@footmark/site';

/** The pipes that an as-built sheet tells of: those that were laid; on a site without such, those that were there. */
export function asBuiltPaths({ paths }: Derived): readonly string[] {
  const of = (state: 'as-built' | 'existing') =>
    [...paths.values()].filter(({ path }) => path.state === state).map(({ path }) => path.id);
  const laid = of('as-built');
  return laid.length > 0 ? laid : of('existing');
}
