import { readFileSync } from 'node:fs';
import { derive, moveThings, openSite, type Site } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { changedLabels, changedPrimitives } from './changes';
import { draw } from './draw';
import type { Drawing } from './drawing';
import { labelObstacles } from './labels/labelObstacles';
import { placeLabels } from './labels/placeLabels';

const sample = (): Site => {
  const opened = openSite(
    readFileSync(new URL('../../site/samples/rear-alley.json', import.meta.url), 'utf8'),
  );
  if (!opened.ok) throw new Error('the sample does not open');
  return opened.site;
};

const drawn = (site: Site) => draw(site, derive(site));
const SETTING = { mmPerMetre: 10, measureText: (text: string, height: number) => 0.5 * height * text.length };
const labelled = (drawing: Drawing) =>
  placeLabels(
    drawing.layers.flatMap((layer) => layer.labels),
    labelObstacles(drawing, SETTING.mmPerMetre),
    SETTING,
  );

describe('what has to be painted anew', () => {
  const site = sample();
  const before = drawn(site);
  const hedge = site.features.find((f) => f.kind === 'hedge');
  const moved = drawn(moveThings(site, { ids: [hedge?.id ?? ''], by: { x: 0.0254, y: 0 } }));

  it('is nothing of what is drawn again from the same site', () => {
    const again = drawn(sample());
    expect(again).not.toBe(before);
    expect(changedPrimitives(before, again)).toEqual([]);
    expect(changedLabels(labelled(before), labelled(again))).toEqual([]);
  });

  it('is what moves, where it was and where it is', () => {
    const changed = changedPrimitives(before, moved);
    const isOfHedge = (layer: Drawing['layers'][number]) =>
      layer.primitives.filter((p) => p.target?.kind === 'feature' && p.target.id === hedge?.id);
    const own = [before, moved].flatMap((drawing) => drawing.layers.flatMap(isOfHedge));
    expect(own.length).toBeGreaterThan(0);
    expect(new Set(changed)).toEqual(new Set(own));
  });

  it('is also what moves by less than is ever measured: small steps add up', () => {
    const hair = drawn(moveThings(site, { ids: [hedge?.id ?? ''], by: { x: 1e-10, y: 0 } }));
    expect(changedPrimitives(before, hair)).toHaveLength(changedPrimitives(before, moved).length);
  });

  it('is what comes, what goes, and what changes its place in the order', () => {
    const without = drawn({ ...site, features: site.features.filter((f) => f.id !== hedge?.id) });
    const gone = changedPrimitives(before, without);
    expect(gone.length).toBeGreaterThan(0);
    for (const primitive of gone)
      expect(before.layers.some((l) => l.primitives.includes(primitive))).toBe(true);
    expect(new Set(changedPrimitives(without, before))).toEqual(new Set(gone));
    const layers = before.layers.map((l) => ({ ...l, primitives: [...l.primitives].reverse() }));
    for (const { primitives } of layers.filter((l) => l.primitives.length > 1)) {
      const first = primitives[0];
      expect(first && changedPrimitives(before, { ...before, layers }).includes(first)).toBe(true);
    }
  });

  it('is a layer that is hidden or shown again', () => {
    const shown = { ...before, layers: before.layers.filter((l) => l.name !== 'trees') };
    const trees = before.layers.find((l) => l.name === 'trees')?.primitives ?? [];
    expect(trees.length).toBeGreaterThan(0);
    expect(changedPrimitives(before, shown)).toEqual(trees);
    expect(changedPrimitives(shown, before)).toEqual(trees);
  });

  it('is a label that says something else, stands elsewhere or looks otherwise', () => {
    const labels = labelled(before);
    const [first, ...others] = labels;
    if (first === undefined) throw new Error('the sample has labels');
    const { label, at } = first;
    for (const other of [
      { ...first, text: 'other' },
      { ...first, at: { x: at.x, y: at.y + 1e-9 } },
      { ...first, azimuth: first.azimuth + 0.1 },
      { ...first, label: { ...label, height: label.height * 2 } },
      { ...first, leader: [at, { x: at.x + 1, y: at.y }] as const },
    ]) {
      expect(changedLabels(labels, [...others, other])).toEqual([first, other]);
    }
    expect(changedLabels(labels, others)).toEqual([first]);
    expect(changedLabels(others, labels)).toEqual([first]);
  });
});
