import type { Land, Whose } from '@footmark/dig';
import { locate, slicePath } from '@footmark/geometry';
import type { Derived, Site } from '@footmark/site';
import type { DrawingWords } from '../drawOptions';
import type { LayerBuilder } from '../layerBuilder';
import { PEN } from '../lineTypes';
import { SAGITTA_M } from '../pipe/drawPath';
import type { Stroke } from '../primitive';
import { symbols } from '../symbols/symbols';
import { PRIORITY, TEXT_MM } from '../textStyle';

const BAND_MM = 3.4;
/** Beside the pipe where others are to be asked, told apart by more than colour: shared land in pieces, a neighbour's in the ink of warnings. */
const BANDS: Partial<Record<Whose, Stroke>> = {
  public: { ink: 'land', weight: BAND_MM, opacity: 0.4 },
  shared: { ink: 'land', weight: BAND_MM, opacity: 0.4, dash: [3, 1.2] },
  neighbour: { ink: 'warning', weight: BAND_MM, opacity: 0.4 },
  outside: { ink: 'land', weight: BAND_MM, opacity: 0.25, dash: [1, 1.2] },
};
const TICK: Stroke = { ink: 'land', weight: PEN.medium };

/** Whose land pipes are on where it is not the owner's own, and where they cross from one to the other. */
export function drawLand(
  { stretches, crossings }: Land,
  { paths }: Derived,
  site: Site,
  words: DrawingWords,
  into: LayerBuilder,
): void {
  for (const stretch of stretches) {
    const on = paths.get(stretch.path);
    const stroke = BANDS[stretch.whose];
    if (on === undefined || stroke === undefined) continue;
    const points = slicePath(on.line, stretch.from, stretch.to, SAGITTA_M);
    into.add('land', { kind: 'line', points, closed: false, stroke });
    const { point: at, azimuth } = locate(on.line, (stretch.from + stretch.to) / 2);
    const text = words.whose?.(stretch.whose) ?? '';
    if (text === '') continue;
    into.label('land', {
      id: `${stretch.path}/land/${stretch.from}`,
      text,
      at,
      height: TEXT_MM.small,
      ink: stroke.ink,
      weight: 'regular',
      priority: PRIORITY.land,
      seat: 'along',
      along: { azimuth, span: stretch.to - stretch.from },
      clear: BAND_MM / 2,
      whenCrowded: 'leave-out',
      target: { kind: 'path', id: stretch.path },
    });
  }
  for (const crossing of crossings) {
    const on = paths.get(crossing.path);
    if (on === undefined) continue;
    const { azimuth } = locate(on.line, crossing.station);
    const target = { kind: 'feature', id: crossing.feature } as const;
    into.add('land', {
      kind: 'symbol',
      at: crossing.at,
      symbol: 'land-crossing',
      azimuth,
      stroke: TICK,
      target,
    });
    const text = words.landCrossing?.(crossing, site) ?? '';
    if (text === '') continue;
    into.label('land', {
      id: `${crossing.path}/crossing/${crossing.feature}/${crossing.station}`,
      text,
      at: crossing.at,
      height: TEXT_MM.small,
      ink: 'land',
      weight: 'regular',
      priority: PRIORITY.land,
      seat: 'around',
      clear: symbols['land-crossing'].clear,
      whenCrowded: 'leader',
      target,
    });
  }
}
