import type { EdgeClearance } from '@footmark/dig';
import { azimuthBetween, COINCIDENT_M, distance, midpoint } from '@footmark/geometry';
import type { Units } from '@footmark/site';
import type { Highlight } from '../drawOptions';
import { lengthText } from '../features/dimensionText';
import type { LayerBuilder } from '../layerBuilder';
import { PEN } from '../lineTypes';
import type { Stroke } from '../primitive';
import { PRIORITY, TEXT_MM } from '../textStyle';

/** As many dimension lines as can be read at once. */
const MOST = 4;
/** What a dig is further off than this (m), and no rule is missed by, is not in its way. */
const NEAR_M = 5;

/** The worst clearances of what is chosen as dimension lines, those that miss their rule in the ink of warnings. */
export function drawClearances(
  clearances: readonly EdgeClearance[],
  highlight: Highlight | undefined,
  units: Units,
  into: LayerBuilder,
): void {
  for (const one of clearancesToDraw(clearances, highlight)) {
    const { of, feature, from, at, verdict } = one;
    const azimuth = azimuthBetween(from, at);
    const ink = verdict === 'misses' || verdict === 'by-depth' ? 'warning' : 'ink';
    const stroke: Stroke = { ink, weight: PEN.fine };
    const target = { kind: 'feature', id: feature } as const;
    into.add('clearances', { kind: 'line', points: [from, at], closed: false, stroke });
    for (const end of [from, at]) {
      into.add('clearances', { kind: 'symbol', at: end, symbol: 'dimension-end', azimuth, stroke });
    }
    into.label('clearances', {
      id: `${idOf(of)}/clearance/${feature}`,
      text: lengthText(units, one.distance),
      at: midpoint(from, at),
      height: TEXT_MM.tie,
      ink,
      weight: 'regular',
      priority: PRIORITY.clearance,
      seat: 'around',
      clear: 0.8,
      whenCrowded: 'leader',
      target,
    });
  }
}

/**
 * Of a chosen dig all that is near; of a chosen pipe or mark, whose own drawing is full, only what misses its rule. What touches or
 * overlaps has no line, and one feature has one.
 */
export function clearancesToDraw(
  clearances: readonly EdgeClearance[],
  highlight: Highlight | undefined,
): readonly EdgeClearance[] {
  const seen = new Set<string>();
  const found: EdgeClearance[] = [];
  for (const one of clearances) {
    if (found.length === MOST) break;
    if (!isOfChosen(one.of, highlight) || seen.has(one.feature)) continue;
    if (distance(one.from, one.at) <= COINCIDENT_M || one.distance <= 0) continue;
    const missed = one.verdict === 'misses' || one.verdict === 'by-depth';
    if (!missed && (one.of.is !== 'outline' || one.distance > NEAR_M)) continue;
    seen.add(one.feature);
    found.push(one);
  }
  return found;
}

function isOfChosen(of: EdgeClearance['of'], highlight: Highlight | undefined): boolean {
  switch (of.is) {
    case 'path':
      return highlight?.path === of.id;
    case 'mark':
      return highlight?.mark?.run === of.run && highlight.mark.id === of.reading;
    case 'outline':
      return highlight?.dig === of.dig;
  }
}

function idOf(of: EdgeClearance['of']): string {
  return of.is === 'path' ? of.id : of.is === 'mark' ? `${of.run}/${of.reading}` : of.dig;
}
