import { azimuthBetween, distance, interpolate, type Point } from '@footmark/geometry';
import type { Target } from '@footmark/site';
import type { Label } from './label';
import type { Ink } from './primitive';
import { PRIORITY, TEXT_MM } from './textStyle';

/** Letters are offered this often along a line (m), middle first, and thinned on paper. */
const OFFER_EVERY_M = 3;
const MOST_OFFERS = 64;
const APART_MM = 45;

/** The letters that say what a line is (`SS`, `W`, `R/W`), standing on it in the direction of its legs. */
export function lineLetters(
  of: Readonly<{ id: string; points: readonly Point[]; letters: string; ink: Ink; target: Target }>,
): readonly Label[] {
  const legs = of.points.slice(1).map((to, i) => {
    const from = of.points[i] ?? to;
    return { from, to, span: distance(from, to) };
  });
  return legs.flatMap((leg, i) => {
    const count = Math.min(MOST_OFFERS, Math.max(1, Math.round(leg.span / OFFER_EVERY_M)));
    return Array.from({ length: count }, (_, k): Label => {
      const t = (k + 0.5) / count;
      return {
        id: `${of.id}/letters/${i}/${k}`,
        text: of.letters,
        at: interpolate(leg.from, leg.to, t),
        height: TEXT_MM.small,
        ink: of.ink,
        weight: 'bold',
        // nearest the middle first, the longer leg before the shorter
        priority: PRIORITY.letters - Math.abs(t - 0.5) * 20 + Math.min(9, leg.span / 10),
        seat: 'on-line',
        along: { azimuth: azimuthBetween(leg.from, leg.to), span: leg.span / count },
        clear: 0,
        whenCrowded: 'leave-out',
        repeat: { group: `${of.id}/letters`, apartMm: APART_MM },
        target: of.target,
      };
    });
  });
}
