import type { Bounds, Drawing, Label, LinePrimitive } from '@footmark/drawing';
import { type Detail, detailBounds, isInDetail } from './details';
import { paintedLabels } from './placeTexts';

const FRAME = { weight: 0.35, dash: [3, 1.2] } as const;
const NAME = { capitals: 2.3, priority: 1950, clear: 1 } as const;

/** A drawing with the frames of its details, each named where that is within `shown`; painted points inside of them are named in those. */
export function withDetails(
  drawing: Drawing,
  details: readonly Detail[],
  { nameOf, shown }: Readonly<{ nameOf: (letter: string) => string; shown: Bounds }>,
): Drawing {
  if (details.length === 0) return drawing;
  const painted = new Set(
    paintedLabels(drawing)
      .filter((label) => details.some((d) => isInDetail(label.at, d)))
      .map((label) => label.id),
  );
  const layers = drawing.layers.map((layer) => {
    const labels = layer.labels.filter((label) => !painted.has(label.id));
    // above all else, and no point that is painted
    return layer.name === 'notes'
      ? {
          ...layer,
          primitives: [...layer.primitives, ...details.map(frameOf)],
          labels: [...labels, ...details.map((d) => nameLabel(d, nameOf(d.letter), shown))],
        }
      : { ...layer, labels };
  });
  return { ...drawing, layers };
}

/** From the edge of what is shown, to its width. */
const INSET = 0.02;

function frameOf(detail: Detail): LinePrimitive {
  const { minX, minY, maxX, maxY } = detailBounds(detail);
  return {
    kind: 'line',
    closed: true,
    points: [
      { x: minX, y: minY },
      { x: maxX, y: minY },
      { x: maxX, y: maxY },
      { x: minX, y: maxY },
    ],
    stroke: { ink: 'ink', ...FRAME },
  };
}

/** At its upper right corner, or where its frame meets the edge of what is shown. */
function nameLabel(detail: Detail, text: string, shown: Bounds): Label {
  const { maxX, maxY } = detailBounds(detail);
  const inset = INSET * (shown.maxX - shown.minX);
  const at = { x: Math.min(maxX, shown.maxX - inset), y: Math.min(maxY, shown.maxY - inset) };
  return {
    id: `detail/${detail.letter}`,
    text,
    at,
    height: NAME.capitals,
    ink: 'ink',
    weight: 'bold',
    priority: NAME.priority,
    seat: 'around',
    clear: NAME.clear,
    whenCrowded: 'always',
  };
}
