import { readFileSync } from 'node:fs';
import type { Point } from '@footmark/geometry';
import {
  derive,
  type Feature,
  featureKindIds,
  kindSpec,
  newSite,
  observationKindIds,
  observationKinds,
  openSite,
  type Site,
} from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { draw } from './draw';
import { layerNames } from './drawing';
import { lineTypes } from './lineTypes';
import type { Primitive } from './primitive';
import { symbols } from './symbols/symbols';

const CORNERS = [
  [0, 0],
  [6, 0],
  [6, 4],
  [0, 4],
] as const;
const COUNT = { point: 1, line: 3, area: 4 } as const;

function empty(): Site {
  return newSite({
    id: 's',
    name: '',
    createdAt: '2026-01-01T00:00:00Z',
    units: { length: 'ft', diameter: 'in', direction: 'bearing' },
  });
}

function featureOf(kind: (typeof featureKindIds)[number], byEye: readonly number[] = []): Feature {
  const vertices = CORNERS.slice(0, COUNT[kindSpec(kind).shape]).map(([x, y], i) => ({
    id: `v${i}`,
    spot: { by: byEye.includes(i) ? 'finger' : 'coordinates', x, y } as const,
  }));
  return { id: 'f', kind, name: 'N', vertices, fields: {} } as Feature; // one of the table's kinds, with no field given
}

function drawn(features: Feature[]) {
  const site = { ...empty(), features };
  return draw(site, derive(site));
}

function primitivesAbout(drawing: ReturnType<typeof draw>, layer: string): readonly Primitive[] {
  return drawing.layers.find((l) => l.name === layer)?.primitives ?? [];
}

function sample(): Site {
  const opened = openSite(
    readFileSync(new URL('../../site/samples/rear-alley.json', import.meta.url), 'utf8'),
  );
  if (!opened.ok) throw new Error('the sample does not open');
  return opened.site;
}

describe('draw', () => {
  it('gives every layer, in painting order, also for an empty site', () => {
    const drawing = drawn([]);
    expect(drawing.layers.map((l) => l.name)).toEqual(layerNames);
    expect(drawing.bounds).toBeNull();
  });

  it.each(featureKindIds)('draws a %s on its layer, with its target and its name', (kind) => {
    const drawing = drawn([featureOf(kind)]);
    const own = primitivesAbout(drawing, kindSpec(kind).layer);
    expect(own.length).toBeGreaterThan(0);
    for (const p of own) expect(p.target).toEqual({ kind: 'feature', id: 'f' });
    expect(drawing.bounds).not.toBeNull();
  });

  it.each(featureKindIds)('%s has a symbol or a line type that is drawn here', (kind) => {
    const { shape, symbol, lineType } = kindSpec(kind);
    if (shape === 'point') expect(Object.keys(symbols)).toContain(symbol);
    else expect(Object.keys(lineTypes)).toContain(lineType);
  });

  it('refuses a kind whose symbol is not drawn here', () => {
    const site = { ...empty(), features: [featureOf('pole')] };
    const derived = derive(site);
    const [pole] = derived.features.values();
    if (pole === undefined) throw new Error('the pole has a place');
    const strange = { ...pole, spec: { ...pole.spec, symbol: 'windmill' } };
    expect(() => draw(site, { ...derived, features: new Map([['f', strange]]) })).toThrow('windmill');
  });

  it.each(observationKindIds)('has a mark symbol for %s', (kind) => {
    expect(Object.keys(symbols)).toContain(observationKinds[kind].symbol);
  });

  it('draws measured legs solid and legs put there by eye dashed', () => {
    const walls = primitivesAbout(drawn([featureOf('building', [2])]), 'buildings').filter(
      (p) => p.kind === 'line' && p.stroke !== undefined,
    );
    const dashed = walls.filter((p) => p.kind === 'line' && p.stroke?.dash !== undefined);
    expect(walls).toHaveLength(2);
    // the leg that ends at the corner put there by eye, and only that
    expect(dashed.map((p) => (p.kind === 'line' ? p.points : []))).toEqual([
      [
        { x: 6, y: 0 },
        { x: 6, y: 4 },
      ],
    ]);
  });

  it('says about the length of a leg by eye, and the length of a measured one', () => {
    const texts = drawn([featureOf('building', [2])]).layers.flatMap((l) => l.labels.map((x) => x.text));
    expect(texts).toContain('19.69 ft');
    expect(texts).toContain('≈ 13.1 ft');
  });

  it('labels a locate with the reading that it belongs to, and its own name', () => {
    const site = sample();
    const textsOf = (s: Site, id: string) =>
      draw(s, derive(s)).layers.flatMap((l) =>
        l.labels.filter((x) => x.target?.kind === 'feature' && x.target.id === id).map((x) => x.text),
      );
    const locates = site.features.filter((f) => f.kind === 'locate');
    expect(locates.map((f) => textsOf(site, f.id))).toEqual(
      ['A3', 'A7', 'A10', 'B3'].map((label) => [expect.stringMatching(new RegExp(`^${label}\\b`))]),
    );
    const [first] = locates;
    if (first === undefined) throw new Error('the sample has locates');
    const others = site.features.filter((f) => f !== first);
    const lone = { ...first, fields: {} } as Feature; // still a locate
    expect(textsOf({ ...site, features: [...others, lone] }, first.id)).toEqual([]);
    const named = { ...first, name: 'twice' };
    expect(textsOf({ ...site, features: [...others, named] }, first.id)).toEqual([
      expect.stringMatching(/^A3\b.* twice$/),
    ]);
  });

  it('draws a trunk and a crown at true size', () => {
    const tree = { ...featureOf('tree'), fields: { trunkDiameter: 0.5, crownSpread: 8 } } as Feature; // fields of a tree
    const circles = primitivesAbout(drawn([tree]), 'trees').filter((p) => p.kind === 'circle');
    expect(circles.map((p) => p.radius)).toEqual([4, 0.25]);
    expect(drawn([tree]).bounds).toEqual({ minX: -4, minY: -4, maxX: 4, maxY: 4 });
  });

  // uniform colour code: APWA / ANSI Z535.1 (STANDARDS C1, read)
  it.each([
    ['water', 'water'],
    ['gas', 'gas'],
    ['electric', 'electric'],
    ['communication', 'communication'],
    ['reclaimed-water', 'reclaimed-water'],
    ['storm-drain', 'storm'],
  ])('draws a %s service in its ink', (carries, ink) => {
    const service = { ...featureOf('service'), fields: { carries } } as Feature; // one of the choices
    for (const p of primitivesAbout(drawn([service]), 'services')) {
      expect(p).toMatchObject({ stroke: { ink } });
    }
  });

  it('draws a proposed pipe with another line than an existing one', () => {
    const site = sample();
    const dashesOf = (state: 'existing' | 'proposed') => {
      const of = { ...site, paths: site.paths.map((p) => ({ ...p, state })) };
      return primitivesAbout(draw(of, derive(of)), 'pipe')
        .filter((p) => p.kind === 'line')
        .map((p) => (p.kind === 'line' ? p.stroke?.dash : undefined));
    };
    const dashes = dashesOf('proposed').filter((dash) => dash !== undefined);
    expect(dashes).not.toEqual([]);
    for (const dash of dashes) expect(dashesOf('existing')).not.toContainEqual(dash);
  });

  it('paints each leg of a proposed pipe white with dark dashes in it, and writes beside it in ink', () => {
    const site = sample();
    const of = { ...site, paths: site.paths.map((p) => ({ ...p, state: 'proposed' as const })) };
    const drawing = draw(of, derive(of));
    const lines = primitivesAbout(drawing, 'pipe').filter((p) => p.kind === 'line');
    expect(lines.length).toBeGreaterThan(1);
    // white is the uniform colour code's for a proposed excavation (APWA / ANSI Z535.1, STANDARDS C1)
    lines.forEach((p, i) => {
      expect(p.stroke?.ink).toBe(i % 2 === 0 ? 'proposed' : 'proposed-dash');
    });
    for (const { ink } of drawing.layers.find((l) => l.name === 'pipe')?.labels ?? [])
      expect(ink).toBe('ink');
  });

  it('marks every reading that has a place, in green, with its label', () => {
    const site = sample();
    const derived = derive(site);
    const layer = draw(site, derived).layers.find((l) => l.name === 'marks');
    const placed = derived.marks.filter((m) => m.place !== null);
    expect(layer?.labels.map((l) => l.text)).toEqual(placed.map((m) => m.label));
    const symbols = layer?.primitives.filter((p) => p.kind === 'symbol') ?? [];
    expect(symbols).toHaveLength(placed.length);
    for (const p of layer?.primitives ?? []) expect(p.stroke).toMatchObject({ ink: 'sewer' });
  });

  it('draws the ties of the highlighted mark and of no other', () => {
    const site = sample();
    const derived = derive(site);
    const mark = derived.marks.find((m) => m.place?.ties?.check != null);
    if (mark === undefined) throw new Error('the sample has a mark with ties');
    const tapes = (drawing: ReturnType<typeof draw>) =>
      primitivesAbout(drawing, 'ties').filter((p) => p.kind === 'line');
    expect(tapes(draw(site, derived))).toEqual([]);
    const highlight = { mark: { run: mark.run.id, id: mark.reading.id } };
    const shown = draw(site, derived, { highlight });
    expect(tapes(shown)).toHaveLength(3);
    expect(tapes(shown).map((p) => (p.kind === 'line' ? p.points[1] : null))).toEqual(
      Array(3).fill(mark.place?.at),
    );
  });

  it('rings a landmark that is a cleanout, and leaves the letters to be read', () => {
    const site = sample();
    const derived = derive(site);
    const marks = primitivesAbout(draw(site, derived), 'marks');
    const a2 = derived.marks.find((m) => m.label === 'A2');
    const symbolAt = (id: string | undefined) =>
      marks.find((p) => p.target?.kind === 'reading' && p.target.id === id);
    expect(symbolAt(a2?.reading.id)).toMatchObject({ symbol: 'mark-landmark-around' });
    const { parts } = symbols['mark-landmark-around'];
    for (const part of parts) {
      expect(part.paint).toBe('stroke');
      expect(part.kind === 'circle' && part.radius).toBeGreaterThan(symbols.cleanout.clear);
    }
  });

  it('rings the point that a tape starts from, and leaves its symbol to be read', () => {
    const site = sample();
    const derived = derive(site);
    const points = [...derived.features.values()]
      .filter((f) => f.spec.shape === 'point')
      .flatMap((f) => f.points);
    const onPoint = (at: Point) => points.some((p) => p.x === at.x && p.y === at.y);
    const shown = derived.marks.map(({ run, reading }) =>
      draw(site, derived, { highlight: { mark: { run: run.id, id: reading.id } } }),
    );
    const ends = shown.flatMap((drawing) =>
      primitivesAbout(drawing, 'ties').filter((p) => p.kind === 'symbol'),
    );
    expect(ends.some((p) => onPoint(p.at))).toBe(true);
    expect(ends.some((p) => !onPoint(p.at))).toBe(true);
    for (const p of ends) expect(p.symbol).toBe(onPoint(p.at) ? 'tie-end-around' : 'tie-end');
  });

  it('tints pavement no stronger where two kinds of it cross', () => {
    const features = (['driveway', 'sidewalk'] as const).map((kind) => ({ ...featureOf(kind), id: kind }));
    const own = primitivesAbout(drawn(features), 'pavement');
    const fills = own.flatMap((p) => (p.kind === 'line' && p.stroke === undefined ? [p.fill] : []));
    // each covers with paper before it tints, and all of that lies below the outlines
    expect(fills.map((f) => [f?.ink, f?.opacity])).toEqual([
      ['paper', 1],
      ['pavement', 0.13],
      ['paper', 1],
      ['pavement', 0.13],
    ]);
    expect(own.slice(fills.length).every((p) => p.kind === 'line' && p.fill === undefined)).toBe(true);
  });

  it('gives labels ids that are unique', () => {
    const site = sample();
    const ids = draw(site, derive(site)).layers.flatMap((l) => l.labels.map((x) => x.id));
    expect(new Set(ids).size).toBe(ids.length);
  });
});
