import type { Drawing, Label, SymbolPrimitive } from '@footmark/drawing';
import type { ReferencePoint, Site, Ties } from '@footmark/site';

/** Named before all but what is chosen: without them no tape begins anywhere. */
const PRIORITY = 1200;
const CAPITALS_MM = 1.8;
const CLEAR_MM = 1.2;
const PEN_MM = 0.25;

/** The points that tapes begin at, each once. */
export function referencesOf(ties: readonly (Ties | null | undefined)[]): readonly ReferencePoint[] {
  const found = new Map<string, ReferencePoint>();
  for (const each of ties) {
    if (each == null) continue;
    for (const tie of [...each.pair, each.check]) if (tie !== null) found.set(tie.from.key, tie.from);
  }
  return [...found.values()];
}

/**
 * A drawing on which every point that a tape of the tables begins at is marked and named: a corner with its thing's name and its letter, a
 * thing of one point by its own name, whatever crowds there.
 */
export function withReferences(drawing: Drawing, references: readonly ReferencePoint[], site: Site): Drawing {
  const corners = references.filter((r) => r.corner !== null);
  const things = new Set(references.filter((r) => r.corner === null).map((r) => `${r.ref.of}/name`));
  const names = new Map(site.features.map((f) => [f.id, f.name]));
  const symbols = corners.map(
    ({ at }): SymbolPrimitive => ({
      kind: 'symbol',
      at,
      symbol: 'tie-end',
      azimuth: 0,
      stroke: { ink: 'survey', weight: PEN_MM },
    }),
  );
  const labels = corners.map((r): Label => {
    const letter = r.corner ?? '';
    return {
      id: `reference/${r.key}`,
      text: `${names.get(r.ref.of) ?? ''} ${letter}`.trim(),
      at: r.at,
      height: CAPITALS_MM,
      ink: 'survey',
      weight: 'bold',
      priority: PRIORITY,
      seat: 'around',
      clear: CLEAR_MM,
      whenCrowded: 'always',
    };
  });
  const layers = drawing.layers.map((layer) => {
    const own = layer.labels.map((label) =>
      things.has(label.id) ? { ...label, priority: PRIORITY, whenCrowded: 'leader' as const } : label,
    );
    return layer.name === 'ties'
      ? { ...layer, primitives: [...layer.primitives, ...symbols], labels: [...own, ...labels] }
      : { ...layer, labels: own };
  });
  return { ...drawing, layers };
}
