import { locate, type PathElement } from '@footmark/geometry';
import { type DerivedPath, formatDiameter, type Site } from '@footmark/site';
import type { DrawingWords } from '../drawOptions';
import type { Label } from '../label';
import { PRIORITY, TEXT_MM } from '../textStyle';
import { pipePens } from './pipePens';

/** Clear of ticks and flow arrows, paper mm. */
const BESIDE_TICKS_MM = 1.2;

type Straight = Readonly<{ from: number; to: number }>;

/** What the pipe is, stretch by stretch (`4″ clay`), along the longest straight piece of each. */
export function stretchLabels(of: DerivedPath, units: Site['units'], words: DrawingWords): readonly Label[] {
  return of.path.stretches.flatMap((stretch, i): readonly Label[] => {
    const end = Math.min(of.length, of.path.stretches[i + 1]?.from ?? of.length);
    const straight = longestStraight(of, stretch.from, end);
    if (straight === null) return [];
    const { point, azimuth } = locate(of.line, (straight.from + straight.to) / 2);
    const material = words.material?.(stretch.material) ?? '';
    return [
      {
        id: `${of.path.id}/stretch/${i}`,
        text: `${formatDiameter(stretch.diameter, units.diameter)} ${material}`.trimEnd(),
        at: point,
        height: TEXT_MM.small,
        ink: pipePens[of.path.state].measured.ink,
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

/** The longest piece without a bend between two stations. */
function longestStraight(of: DerivedPath, from: number, to: number): Straight | null {
  let best: Straight | null = null;
  of.line.elements.forEach((element: PathElement, i) => {
    if (element.kind !== 'straight') return;
    const start = of.line.starts[i] ?? 0;
    const piece = { from: Math.max(from, start), to: Math.min(to, start + element.length) };
    if (piece.to <= piece.from) return;
    if (best === null || piece.to - piece.from > best.to - best.from) best = piece;
  });
  return best;
}
