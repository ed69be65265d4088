import { type Drawing, type DrawingLayer, draw, type LayerName } from '@footmark/drawing';
import type { ReferencePoint, SetOut, Target } from '@footmark/site';
import type { SheetKind } from '@footmark/words';
import type { SheetSetting } from '../setting';
import { drawingWordsOf } from './drawingWords';
import { withReferences } from './usedReferences';

/** What a kind of sheet leaves out of the plan: layers, and things of what kinds. */
type LeftOut = Readonly<{ layers: readonly LayerName[]; targets: readonly Target['kind'][] }>;

const LEFT_OUT: Readonly<Record<SheetKind, LeftOut>> = {
  'mark-out': { layers: ['fitted', 'clearances', 'root-zones'], targets: ['run', 'set-out'] },
  reroute: { layers: ['fitted', 'clearances', 'zones', 'coverage'], targets: ['reading'] },
  'as-built': {
    layers: ['fitted', 'clearances', 'zones', 'coverage', 'root-zones'],
    targets: ['reading', 'set-out'],
  },
  findings: {
    layers: ['fitted', 'clearances', 'zones', 'excavation', 'root-zones', 'ties', 'survey', 'notes'],
    targets: ['run', 'set-out'],
  },
};

/** The plan of a sheet: the site drawn as on the screen, less what this kind does not tell of, with the points that tapes begin at. */
export function planDrawing(
  setting: SheetSetting,
  { references, setOuts }: Readonly<{ references: readonly ReferencePoint[]; setOuts: readonly SetOut[] }>,
): Drawing {
  const { site, derived, fit, inTheWay, words, options } = setting;
  const { layers, targets } = LEFT_OUT[options.kind];
  const whole = draw(site, derived, {
    words: drawingWordsOf(words),
    dimensions: options.kind !== 'findings',
    ...(fit === null ? {} : { fit }),
    dig: {
      excavations: inTheWay.excavations,
      treeZones: layers.includes('root-zones') ? [] : inTheWay.trees.trees,
    },
  });
  const kept = whole.layers
    .filter((layer) => !layers.includes(layer.name))
    .map((layer) => withoutTargets(layer, targets));
  const drawing = { ...whole, layers: kept };
  const asBuilt = options.kind === 'as-built' ? withPoints(drawing, setOuts) : drawing;
  return withReferences(asBuilt, references, site);
}

function withoutTargets(layer: DrawingLayer, kinds: readonly Target['kind'][]): DrawingLayer {
  const stays = ({ target }: { target?: Target }) => target === undefined || !kinds.includes(target.kind);
  return { ...layer, primitives: layer.primitives.filter(stays), labels: layer.labels.filter(stays) };
}

const POINT = { clear: 1.6, capitals: 2.1, priority: 1050, pen: 0.35 } as const;

/** The points of pipes that lie in the ground, by the labels of their table. */
function withPoints(drawing: Drawing, setOuts: readonly SetOut[]): Drawing {
  const points = setOuts.flatMap((s) => s.points);
  return {
    ...drawing,
    layers: drawing.layers.map((layer) =>
      layer.name !== 'marks'
        ? layer
        : {
            ...layer,
            primitives: [
              ...layer.primitives,
              ...points.map(({ at, is }) => ({
                kind: 'symbol' as const,
                at,
                symbol: is === 'bend' ? ('set-out-bend' as const) : ('set-out-point' as const),
                azimuth: 0,
                stroke: { ink: 'ink' as const, weight: POINT.pen },
              })),
            ],
            labels: [
              ...layer.labels,
              ...points.map(({ at, label, path, number }) => ({
                id: `${path}/point/${number}`,
                text: label,
                at,
                height: POINT.capitals,
                ink: 'ink' as const,
                weight: 'bold' as const,
                priority: POINT.priority,
                seat: 'around' as const,
                clear: POINT.clear,
                whenCrowded: 'leader' as const,
              })),
            ],
          },
    ),
  };
}
