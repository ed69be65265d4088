import { azimuthBetween, distance, midpoint, type Point } from '@footmark/geometry';
import type { Target } from '@footmark/site';
import type { DrawingWords } from '../drawOptions';
import type { Label } from '../label';
import type { Ink } from '../primitive';
import { PRIORITY, TEXT_MM } from '../textStyle';

/** What the line is, along its longest straight piece. */
export function fittedLabel(
  id: string,
  points: readonly Point[],
  ink: Ink,
  { fitted = '' }: DrawingWords,
  target: Target,
): readonly Label[] {
  const legs = points.slice(1).map((to, i) => ({ from: points[i] ?? to, to }));
  const [first, ...rest] = legs;
  if (first === undefined || fitted === '') return [];
  const span = (leg: typeof first) => distance(leg.from, leg.to);
  const longest = rest.reduce((best, leg) => (span(leg) > span(best) ? leg : best), first);
  return [
    {
      id: `${id}/fitted`,
      text: fitted,
      at: midpoint(longest.from, longest.to),
      height: TEXT_MM.small,
      ink,
      weight: 'regular',
      priority: PRIORITY.fitted,
      seat: 'along',
      along: { azimuth: azimuthBetween(longest.from, longest.to), span: span(longest) },
      clear: 0.8,
      whenCrowded: 'leave-out',
      target,
    },
  ];
}
