import type { Frame } from './frame';
import type { ReadingRef } from './readingRef';
import type { Run } from './run';
import type { Site } from './site';
import type { Ref } from './spot';
import type { Underlay } from './underlay';

/** A point that is named by something other than a spot, and the way to that place in the file. */
export type PlacedRef = { readonly ref: Ref; readonly path: readonly (string | number)[] };

/** The points that tell how the site lies on the earth. */
export function refsInFrame({ north, control }: Frame): readonly PlacedRef[] {
  const line =
    north.by === 'line' || north.by === 'compass'
      ? [
          { ref: north.from, path: ['frame', 'north', 'from'] },
          { ref: north.to, path: ['frame', 'north', 'to'] },
        ]
      : [];
  return [...line, ...control.map((c, i) => ({ ref: c.point, path: ['frame', 'control', i, 'point'] }))];
}

/** The points that pictures are fitted to. */
export function refsInUnderlays(underlays: readonly Underlay[]): readonly PlacedRef[] {
  return underlays.flatMap(({ fit }, i) =>
    fit.by !== 'pairs'
      ? []
      : fit.pairs.flatMap(({ to }, j) =>
          to.is === 'point'
            ? [{ ref: to.point, path: ['underlays', i, 'fit', 'pairs', j, 'to', 'point'] }]
            : [],
        ),
  );
}

/** The points that runs name: where a counter was zeroed, and what readings saw. */
export function refsInRuns(runs: readonly Run[]): readonly PlacedRef[] {
  return runs.flatMap(({ zero, readings }, i) => [
    ...(zero.at === 'point' ? [{ ref: zero.point, path: ['runs', i, 'zero', 'point'] }] : []),
    ...readings.flatMap(({ seenAt }, j) =>
      seenAt === undefined ? [] : [{ ref: seenAt, path: ['runs', i, 'readings', j, 'seenAt'] }],
    ),
  ]);
}

/** The lists of a site in which two readings stand together. */
export const pairLists = ['pairs', 'different'] as const;

/** A reading that is named outside of its run, and the way to that place in the file. */
export type PlacedReadingRef = { readonly ref: ReadingRef; readonly path: readonly (string | number)[] };

/** The readings that pairs and locates name. */
export function readingRefs(site: Site): readonly PlacedReadingRef[] {
  return [
    ...pairLists.flatMap((list) =>
      site[list].flatMap(({ a, b }, i) => [
        { ref: a, path: [list, i, 'a'] },
        { ref: b, path: [list, i, 'b'] },
      ]),
    ),
    ...site.features.flatMap((f, i) =>
      f.kind === 'locate' && f.fields.reading !== undefined
        ? [{ ref: f.fields.reading, path: ['features', i, 'fields', 'reading'] }]
        : [],
    ),
  ];
}
