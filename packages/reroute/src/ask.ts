import type { Derived, PipeMaterial } from '@footmark/site';
import { type Arrival, AT_ITS_END } from './arrival';
import { outOfDoors } from './outOfDoors';
import type { Treatment } from './treatment';

/** What is asked otherwise than the rules and levels of the site have it; what is absent is as they do. Metres, levels of the site, fall over run. */
export type Otherwise = {
  readonly startInvert?: number;
  readonly endInvert?: number;
  readonly leastFall?: number;
  readonly mostBends?: number;
  readonly leastStraight?: number;
  /** Standard bends, by their names, of which none is to be laid. */
  readonly withoutBends?: readonly string[];
  /** How far fittings reach past their arc. */
  readonly socket?: number;
  /** It may come in from any side, not only as a wye lies. */
  readonly anyHeading?: true;
};

/**
 * What a new pipe is asked for: from which station (plan metres) of which pipe to where, of what, and what is said otherwise than usual of the things
 * around, by feature. A tree's roots stand under `roots/` and its id.
 */
export type RerouteAsk = {
  readonly path: string;
  readonly from: number;
  readonly to: Arrival;
  /** In which direction it leaves: as the old pipe does there, or square to the nearest wall. */
  readonly leaves: 'along' | 'square';
  readonly diameter: number;
  readonly material: PipeMaterial;
  /** Routes that need more fall than there is are left out. */
  readonly keepsGrade: boolean;
  readonly otherwise: Otherwise;
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
    to: AT_ITS_END,
    leaves: 'along',
    diameter: first?.diameter ?? 0,
    material: 'plastic',
    keepsGrade: true,
    otherwise: {},
    treat: {},
  };
}

/** The stations between which a pipe is asked to be replaced, within its length (m): to its end where the new one does not come back to it. */
export function stationsOf(
  { from, to }: RerouteAsk,
  length: number,
): { readonly from: number; readonly to: number } {
  const back = to.is === 'station' ? to.station : null;
  const last = Math.min(length, back ?? length);
  return { from: Math.min(Math.max(0, from), last), to: last };
}
