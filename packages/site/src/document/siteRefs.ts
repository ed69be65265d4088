import type { Frame } from './frame';
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
