import type { EdgeClearance } from '@footmark/dig';
import { azimuthBetween, COINCIDENT_M, distance, midpoint } from '@footmark/geometry';
import type { Site, Target } from '@footmark/site';
import type { DrawingWords, Highlight } from '../drawOptions';
import { lengthText } from '../features/dimensionText';
import type { LayerBuilder } from '../layerBuilder';
import { PEN } from '../lineTypes';
import type { Stroke } from '../primitive';
import { PRIORITY, TEXT_MM } from '../textStyle';

/** As many dimension lines as can be read at once. */
const MOST = 5;
/** What is further off than this (m), and no rule is missed by, is not in the way. */
const NEAR_M = 5;

/** The worst clearances of what is chosen as dimension lines to what they are from, those that miss their rule in the ink of warnings. */
export function drawClearances(
  clearances: readonly EdgeClearance[],
  highlight: Highlight | undefined,
  site: Site,
  words: DrawingWords,
  into: LayerBuilder,
): void {
  for (const one of clearancesToDraw(clearances, highlight)) {
    const { of, feature, from, at, verdict } = one;
    const azimuth = azimuthBetween(from, at);
    const ink = verdict === 'misses' || verdict === 'by-depth' ? 'warning' : 'ink';
    const stroke: Stroke = { ink, weight: PEN.fine };
    const thing = { kind: 'feature', id: feature } as const;
    const other = highlight?.feature === feature ? targetOf(of) : thing;
    const apart = !overlaps(one);
    if (apart) into.add('clearances', { kind: 'line', points: [from, at], closed: false, stroke });
    for (const end of apart ? [from, at] : [at]) {
      into.add('clearances', { kind: 'symbol', at: end, symbol: 'dimension-end', azimuth, stroke });
    }
    const brief = words.clearance?.(one, other, 'brief', site);
    into.label('clearances', {
      id: `${idOf(of)}/clearance/${feature}`,
      text: words.clearance?.(one, other, 'full', site) ?? lengthText(site.units, Math.max(0, one.distance)),
      ...(brief === undefined ? {} : { brief }),
      at: midpoint(from, at),
      height: TEXT_MM.tie,
      ink,
      weight: 'regular',
      priority: PRIORITY.clearance,
      seat: 'around',
      clear: 0.8,
      whenCrowded: 'leader',
      target: other,
    });
  }
}

/**
 * Of a chosen dig or thing all that is near; of a chosen pipe or mark, whose own drawing is full, only what misses its rule. Between
 * two things there is one, and of a chosen thing at least the nearest.
 */
export function clearancesToDraw(
  clearances: readonly EdgeClearance[],
  highlight: Highlight | undefined,
): readonly EdgeClearance[] {
  const seen = new Set<string>();
  const own: EdgeClearance[] = [];
  for (const one of clearances) {
    const between = `${idOf(one.of)} ${one.feature}`;
    if (!isOfChosen(one, highlight) || seen.has(between)) continue;
    seen.add(between);
    own.push(one);
  }
  const near = own.filter(isNear).slice(0, MOST);
  return near.length === 0 && highlight?.feature !== undefined ? own.slice(0, 1) : near;
}

function isNear({ of, verdict, distance: apart }: EdgeClearance): boolean {
  if (verdict === 'misses' || verdict === 'by-depth') return true;
  if (verdict === 'crosses' || verdict === 'serves') return false;
  return of.is !== 'mark' && apart <= NEAR_M;
}

function isOfChosen({ of, feature, verdict }: EdgeClearance, highlight: Highlight | undefined): boolean {
  if (highlight?.feature === feature) return of.is !== 'mark';
  switch (of.is) {
    case 'path':
      return highlight?.path === of.id && (verdict === 'misses' || verdict === 'by-depth');
    case 'mark':
      return highlight?.mark?.run === of.run && highlight.mark.id === of.reading;
    case 'outline':
      return highlight?.dig === of.dig;
  }
}

function overlaps({ from, at, distance: apart }: EdgeClearance): boolean {
  return apart <= 0 || distance(from, at) <= COINCIDENT_M;
}

function targetOf(of: EdgeClearance['of']): Target {
  switch (of.is) {
    case 'path':
      return { kind: 'path', id: of.id };
    case 'mark':
      return { kind: 'reading', run: of.run, id: of.reading };
    case 'outline':
      return { kind: 'dig', id: of.dig };
  }
}

function idOf(of: EdgeClearance['of']): string {
  return of.is === 'path' ? of.id : of.is === 'mark' ? `${of.run}/${of.reading}` : of.dig;
}
