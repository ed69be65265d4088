import type { Point } from '@footmark/geometry';
import type { DerivedFeature, Feature, Site } from '@footmark/site';
import type { DrawingWords } from '../drawOptions';
import type { Label } from '../label';
import type { LayerBuilder } from '../layerBuilder';
import { PEN } from '../lineTypes';
import type { Ink, Stroke } from '../primitive';
import { services } from '../services';
import type { SymbolName } from '../symbols/symbolShape';
import { symbols } from '../symbols/symbols';
import { LED_LAYERS, NAME_PRIORITY, TEXT_MM } from '../textStyle';
import { drawTree, placesInCrown } from './drawTree';
import { pointText } from './pointText';

/** Dashes (mm) round a symbol that was put there by eye: short, as the outline is. */
const SYMBOL_BY_EYE: readonly number[] = [0.9, 0.6];

/** Draws a point: its symbol, or a tree at its true size, with its name beside it. `off`: see `pointText`. */
export function drawPoint(
  of: DerivedFeature,
  site: Site,
  words: DrawingWords,
  off: number | null,
  into: LayerBuilder,
): void {
  const [at] = of.points;
  const { feature, spec } = of;
  if (at === undefined) return;
  const ink = inkOf(feature);
  if (feature.kind === 'tree') {
    drawTree(feature, at, of.measured[0] ?? false, into);
  } else {
    const stroke: Stroke = {
      ink,
      weight: PEN.medium,
      ...(of.measured[0] ? {} : { dash: SYMBOL_BY_EYE }),
    };
    const target = { kind: 'feature', id: feature.id } as const;
    into.add(spec.layer, { kind: 'symbol', at, symbol: symbolOf(of), azimuth: 0, stroke, target });
  }
  into.label(spec.layer, ...nameOf(of, at, ink, pointText(feature, site, words, off)));
}

/** The kind's symbol. Throws for one that is not drawn here. */
function symbolOf({ feature, spec }: DerivedFeature): SymbolName {
  if (spec.symbol === undefined || !isSymbol(spec.symbol)) {
    throw new RangeError(`${feature.kind} has no symbol ${spec.symbol}`);
  }
  return spec.symbol;
}

function isSymbol(name: string): name is SymbolName {
  return Object.hasOwn(symbols, name);
}

/** Survey points in the code's pink, services in the code's colour, everything else in ink. */
function inkOf(feature: Feature): Ink {
  switch (feature.kind) {
    case 'reference-point':
    case 'benchmark':
    case 'locate':
      return 'survey';
    case 'well':
    case 'hydrant':
      return 'water';
    case 'meter':
      return feature.fields.carries === undefined ? 'ink' : services[feature.fields.carries].ink;
    case 'tree':
      return 'plant';
    default:
      return 'ink';
  }
}

function nameOf(of: DerivedFeature, at: Point, ink: Ink, text: string): readonly Label[] {
  if (text === '') return [];
  return [
    {
      id: `${of.feature.id}/name`,
      text,
      at,
      height: TEXT_MM.small,
      ink: of.spec.layer === 'services' ? 'ink' : ink,
      weight: 'regular',
      priority: NAME_PRIORITY[of.spec.layer],
      seat: 'around',
      clear: symbols[symbolOf(of)].clear,
      ...(of.feature.kind === 'tree' ? { elsewhere: placesInCrown(of.feature, at) } : {}),
      whenCrowded: LED_LAYERS.has(of.spec.layer) ? 'leader' : 'leave-out',
      target: { kind: 'feature', id: of.feature.id },
    },
  ];
}
