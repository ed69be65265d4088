import { type DerivedPath, NOMINAL_SHARE, ruleValue, type Site, stretchesBetween } from '@footmark/site';
import { type Opening, SAME_M } from './openings';

type Known = Pick<Opening, 'station' | 'is'>;

/** A place by which a further opening is asked for. */
type Spaced = { readonly station: number; readonly reason: 'spacing' | 'manhole' };

/** Where openings, those that are there or that turns ask for, would stand too far apart: cleanouts, and on large sewers manholes. */
export function spacedOpenings(site: Site, on: DerivedPath, known: readonly Known[]): readonly Spaced[] {
  const spacing = ruleValue(site, 'cleanoutSpacing');
  const [first, further] = [ruleValue(site, 'manholeFirst'), ruleValue(site, 'manholeSpacing')];
  return piecesOf(site, on).flatMap(({ from, to, isLarge }): readonly Spaced[] => {
    const within = known.filter(
      (k) => k.station > from && k.station < to && (!isLarge || k.is === 'manhole'),
    );
    const stops = within.map((k) => k.station);
    if (!isLarge)
      return spaced(from, to, stops, () => spacing).map((station) => ({ station, reason: 'spacing' }));
    const found = spaced(from, to, stops, (last) => (last === from ? first : further));
    return found.map((station) => ({ station, reason: 'manhole' }));
  });
}

type Piece = { readonly from: number; readonly to: number; readonly isLarge: boolean };

/** The pieces of a path that are small or large, neighbours of one kind together. */
function piecesOf(site: Site, { path, length }: DerivedPath): readonly Piece[] {
  const least = (1 - NOMINAL_SHARE) * ruleValue(site, 'manholeFrom');
  const found: Piece[] = [];
  for (const { from, to, diameter } of stretchesBetween(path.stretches, 0, length)) {
    const isLarge = least > 0 && diameter >= least;
    const before = found.at(-1);
    if (before?.isLarge === isLarge) found[found.length - 1] = { ...before, to };
    else found.push({ from, to, isLarge });
  }
  return found;
}

/** Stations that leave no more than the spacing after each opening, and after `from`. */
function spaced(
  from: number,
  to: number,
  stops: readonly number[],
  spacingAfter: (last: number) => number,
): readonly number[] {
  const found: number[] = [];
  let last = from;
  for (const next of [...stops, to].sort((a, b) => a - b)) {
    while (spacingAfter(last) > 0 && next - last > spacingAfter(last) + SAME_M) {
      last += spacingAfter(last);
      found.push(last);
    }
    last = Math.max(last, next);
  }
  return found;
}
