import type { Derived, PipeMaterial } from '@footmark/site';
import { outOfDoors } from './outOfDoors';
import type { Treatment } from './treatment';

/**
 * What a new pipe is asked for: between which stations (plan metres) of which pipe, of what, and what is said otherwise than usual of the things
 * around, by feature. A tree's roots stand under `roots/` and its id.
 */
export type RerouteAsk = {
  readonly path: string;
  readonly from: number;
  /** Null: at its end. */
  readonly to: number | null;
  /** In which direction it leaves: as the old pipe does there, or square to the nearest wall. */
  readonly leaves: 'along' | 'square';
  readonly diameter: number;
  readonly material: PipeMaterial;
  /** Routes that need more fall than there is are left out. */
  readonly keepsGrade: boolean;
  readonly treat: Readonly<Record<string, Treatment>>;
};

/** Of the pipe in which most was seen, from where it comes out of the house to its end; null on a site without a pipe. */
export function usualAsk(derived: Derived): RerouteAsk | null {
  const seen = new Map<string, number>();
  for (const { place } of derived.marks)
    if (place !== null) seen.set(place.path, (seen.get(place.path) ?? 0) + 1);
  const existing = [...derived.paths.values()].filter(({ path }) => path.state === 'existing');
  const [on] = existing.sort(
    (a, b) => (seen.get(b.path.id) ?? 0) - (seen.get(a.path.id) ?? 0) || b.length - a.length,
  );
  return on === undefined ? null : usualAskOf(derived, on.path.id);
}

/** What would be asked first of one pipe; null for one without a line. */
export function usualAskOf(derived: Derived, path: string): RerouteAsk | null {
  const on = derived.paths.get(path);
  if (on === undefined) return null;
  const [first] = on.path.stretches;
  return {
    path: on.path.id,
    from: outOfDoors(derived, on),
    to: null,
    leaves: 'along',
    diameter: first?.diameter ?? 0,
    material: 'plastic',
    keepsGrade: true,
    treat: {},
  };
}

/** The stations between which a pipe is asked to be replaced, within its length (m). */
export function stationsOf(
  { from, to }: RerouteAsk,
  length: number,
): { readonly from: number; readonly to: number } {
  const last = Math.min(length, to ?? length);
  return { from: Math.min(Math.max(0, from), last), to: last };
}
