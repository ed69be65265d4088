import { locate } from '@footmark/geometry';
import { type DerivedPath, formatDiameter, type Site } from '@footmark/site';
import type { DrawingWords } from '../drawOptions';
import type { Label } from '../label';
import { PRIORITY, TEXT_MM } from '../textStyle';
import { longestStraight } from './longestStraight';
import { pipePens } from './pipePens';

/** Clear of ticks and flow arrows, paper mm. */
const BESIDE_TICKS_MM = 1.2;

/** What the pipe is, stretch by stretch (`4″ clay`), along the longest straight piece of each. */
export function stretchLabels(of: DerivedPath, units: Site['units'], words: DrawingWords): readonly Label[] {
  return of.path.stretches.flatMap((stretch, i): readonly Label[] => {
    const end = Math.min(of.length, of.path.stretches[i + 1]?.from ?? of.length);
    const straight = longestStraight(of.line, stretch.from, end);
    if (straight === null) return [];
    const { point, azimuth } = locate(of.line, (straight.from + straight.to) / 2);
    const material = words.material?.(stretch.material) ?? '';
    return [
      {
        id: `${of.path.id}/stretch/${i}`,
        text: `${formatDiameter(stretch.diameter, units.diameter)} ${material}`.trimEnd(),
        at: point,
        height: TEXT_MM.small,
        ink: pipePens[of.path.state].beside,
        weight: 'regular',
        priority: PRIORITY.pipe,
        seat: 'along',
        along: { azimuth, span: straight.to - straight.from },
        clear: BESIDE_TICKS_MM,
        whenCrowded: 'leave-out',
        target: { kind: 'path', id: of.path.id },
      },
    ];
  });
}
