import { type Drawing, type DrawingLayer, type LayerName, type Primitive, services } from '@footmark/drawing';
import type { Point } from '@footmark/geometry';
import type { Site } from '@footmark/site';
import type { SheetLegend, Words } from '@footmark/words';
import { lookOf } from './swatch';

/** A line of a legend: a name, the primitives of one such thing, and letters that stand on its line. */
export type LegendEntry = Readonly<{ name: string; primitives: readonly Primitive[]; letters?: string }>;

type Source = Readonly<{ site: Site; words: Words }>;

/** Layers whose kinds look alike and are named on the plan: one line for all that look the same. */
const ALIKE: ReadonlySet<LayerName> = new Set(['pavement', 'buildings', 'structures']);

/** What of a drawing the legend explains, pipes and marks first, then what is around, each look once. */
export function legendEntries(drawing: Drawing, source: Source): readonly LegendEntry[] {
  return [
    ...drainEntries(drawing, source),
    ...drawing.layers.flatMap((l) => featureEntries(l, source)),
    ...byEye(drawing, source),
  ];
}

/** Of the drain alone: its pipes, its marks, and what is said of them. */
export function drainEntries(drawing: Drawing, source: Source): readonly LegendEntry[] {
  const layer = (name: LayerName) => drawing.layers.find((l) => l.name === name)?.primitives ?? [];
  return [
    ...pipeEntries(layer('pipe'), source),
    ...markEntries(layer('marks'), source),
    ...saidEntries(drawing, source),
  ];
}

function pipeEntries(primitives: readonly Primitive[], { site, words }: Source): readonly LegendEntry[] {
  return (['existing', 'proposed', 'as-built'] as const).flatMap((state) => {
    const [id] = site.paths
      .filter((p) => p.state === state)
      .map((p) => p.id)
      .filter((path) => primitives.some((p) => p.target?.kind === 'path' && p.target.id === path));
    if (id === undefined) return [];
    const lines = primitives.filter(
      (p) => p.kind === 'line' && p.target?.kind === 'path' && p.target.id === id,
    );
    const [first] = lines;
    // the strokes of its first leg, one over the other
    const leg = lines.filter(
      (p) => p.kind === 'line' && first?.kind === 'line' && isSameLine(p.points, first.points),
    );
    return [{ name: words.sheet.legend(`pipe-${state}`), primitives: leg, letters: 'SS' }];
  });
}

function isSameLine(a: readonly Point[], b: readonly Point[]): boolean {
  return a.length === b.length && a.every((p, i) => p.x === b[i]?.x && p.y === b[i]?.y);
}

const MARK_SYMBOLS: readonly (readonly [RegExp, SheetLegend])[] = [
  [/^mark-defect/, 'mark-defect'],
  [/^mark-landmark/, 'mark-landmark'],
  [/^set-out-point/, 'set-out'],
  [/^set-out-bend/, 'set-out-bend'],
  [/^mark-open/, 'paint-beside'],
];

function markEntries(primitives: readonly Primitive[], { words }: Source): readonly LegendEntry[] {
  return MARK_SYMBOLS.flatMap(([form, entry]) => {
    const symbols = primitives.filter((p) => p.kind === 'symbol').filter((p) => form.test(p.symbol));
    // the plain form, rather than one around something or with what was done about it
    const [first] = symbols.toSorted((a, b) => a.symbol.length - b.symbol.length);
    if (first === undefined) return [];
    // a point of a pipe that lies in the ground is not to be set out
    const isLaid = first.target === undefined;
    const said =
      isLaid && entry === 'set-out'
        ? 'drain-point'
        : isLaid && entry === 'set-out-bend'
          ? 'drain-bend'
          : entry;
    return [{ name: words.sheet.legend(said), primitives: [first] }];
  });
}

/** What the plan says of places: zones, what nobody saw, where tapes begin, what is to be dug. */
function saidEntries({ layers }: Drawing, { words }: Source): readonly LegendEntry[] {
  const first = (name: LayerName, is: (p: Primitive) => boolean) =>
    layers.find((l) => l.name === name)?.primitives.find(is);
  const found: readonly (readonly [SheetLegend, Primitive | undefined])[] = [
    ['search-zone', first('zones', (p) => p.kind === 'line')],
    ['not-seen', first('coverage', (p) => p.kind === 'pattern')],
    ['tie-point', first('ties', (p) => p.kind === 'symbol')],
    ['station', first('pipe', (p) => p.kind === 'symbol' && p.symbol === 'station-tick')],
    ['excavation', first('excavation', (p) => p.kind === 'line' && p.stroke?.ink === 'proposed-dash')],
    ['root-zone', first('root-zones', (p) => p.kind === 'circle')],
  ];
  return found.flatMap(([entry, primitive]) =>
    primitive === undefined ? [] : [{ name: words.sheet.legend(entry), primitives: [primitive] }],
  );
}

function featureEntries({ name, primitives }: DrawingLayer, { site, words }: Source): readonly LegendEntry[] {
  const byId = new Map(site.features.map((f) => [f.id, f]));
  const things = new Map<string, Primitive[]>();
  for (const p of primitives) {
    if (p.target?.kind !== 'feature') continue;
    const own = things.get(p.target.id);
    if (own === undefined) things.set(p.target.id, [p]);
    else own.push(p);
  }
  const entries = new Map<
    string,
    { names: Set<string>; primitives: readonly Primitive[]; letters?: string }
  >();
  for (const [id, own] of things) {
    const feature = byId.get(id);
    if (feature === undefined || feature.kind === 'note' || feature.kind === 'photo-point') continue;
    const carried = feature.kind === 'service' ? feature.fields.carries : undefined;
    const key = ALIKE.has(name) ? looksOf(own) : `${feature.kind}/${carried ?? ''}`;
    const said = carried === undefined ? words.featureKindName(feature.kind) : words.choiceName(carried);
    const known = entries.get(key);
    if (known !== undefined) known.names.add(said);
    else {
      entries.set(key, {
        names: new Set([said]),
        primitives: own,
        ...(carried === undefined ? {} : { letters: services[carried].letters }),
      });
    }
  }
  return [...entries.values()].map(({ names, primitives: own, letters }) => ({
    name: [...names].join(', '),
    primitives: own,
    ...(letters === undefined ? {} : { letters }),
  }));
}

/** What is inside and beside its outline; that the outline may be dashed is told once for all. */
function looksOf(primitives: readonly Primitive[]): string {
  const looks = primitives.map((p) => (p.kind === 'line' ? JSON.stringify(p.fill ?? null) : lookOf(p)));
  return [...new Set(looks)].sort().join();
}

/** That a dashed line was put there by eye, where there is one. */
function byEye({ layers }: Drawing, { words }: Source): readonly LegendEntry[] {
  const dashed = layers
    .filter((l) => l.name === 'buildings' || l.name === 'structures' || l.name === 'pavement')
    .flatMap((l) => l.primitives)
    .find((p) => p.kind === 'line' && p.stroke?.dash !== undefined && p.stroke.ink === 'assumed');
  if (dashed?.kind !== 'line') return [];
  return [{ name: words.sheet.legend('by-eye'), primitives: [{ ...dashed, closed: false }] }];
}
