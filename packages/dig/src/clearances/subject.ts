import type { Point } from '@footmark/geometry';
import type { Derived, DerivedPath, Mark, Path } from '@footmark/site';
import type { DigOutline } from './digOutline';
import { type LegTable, legTable } from './legTable';
import { type PathLegs, pathLegs } from './pathLegs';

/** What clearances are measured from. */
export type SubjectIs =
  | { readonly is: 'path'; readonly id: string; readonly state: Path['state'] }
  | { readonly is: 'mark'; readonly run: string; readonly reading: string }
  | { readonly is: 'outline'; readonly dig: string };

/** With its legs laid out, once for all the features that it is held against. */
export type Subject = {
  readonly of: SubjectIs;
  readonly table: LegTable;
  /** Of a path the chords of its centre line, of an outline its ring with the first point again, of a mark the one. */
  readonly points: readonly Point[];
  /** Of a path, else null. */
  readonly legs: PathLegs | null;
  /** Of an outline, else null. */
  readonly ring: readonly Point[] | null;
};

export function pathSubject(on: DerivedPath): Subject {
  const legs = pathLegs(on);
  const { points, radii } = legs;
  const of = { is: 'path', id: on.path.id, state: on.path.state } as const;
  return { of, table: legTable(points, radii), points, legs, ring: null };
}

/** Null for a mark without a place. */
export function markSubject({ run, reading, place }: Mark): Subject | null {
  if (place === null) return null;
  const of = { is: 'mark', run: run.id, reading: reading.id } as const;
  return { of, table: legTable([place.at], [0]), points: [place.at], legs: null, ring: null };
}

/** Null for a ring of fewer than three corners. */
export function outlineSubject({ id, ring }: DigOutline): Subject | null {
  if (ring.length < 3) return null;
  const points = [...ring, ...ring.slice(0, 1)];
  const of = { is: 'outline', dig: id } as const;
  return { of, table: legTable(points, new Array<number>(ring.length).fill(0)), points, legs: null, ring };
}

/** Every path that has a curve, every mark that has a place, every outline that is one. */
export function subjectsOf(derived: Derived, outlines: readonly DigOutline[]): readonly Subject[] {
  return [
    ...[...derived.paths.values()].map(pathSubject),
    ...derived.marks.flatMap((mark) => markSubject(mark) ?? []),
    ...outlines.flatMap((outline) => outlineSubject(outline) ?? []),
  ];
}
