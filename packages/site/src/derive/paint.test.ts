import { describe, expect, it } from 'vitest';
import type { Reading } from '../document/run';
import { push, tee, thing, typed, yard } from '../testing/yard';
import { derive } from './derive';
import { markState } from './markState';

/** The pipe runs east from (0, 0); a reading 7 m in it, and three poles to tape from. */
function marked(facts: Partial<Reading>, house: readonly (readonly [number, number])[] = []) {
  const { features, paths } = tee();
  const poles = [
    thing('p1', 'pole', [typed(4, -6)]),
    thing('p2', 'pole', [typed(12, -7)]),
    thing('p3', 'pole', [typed(9, 6)]),
  ];
  const building =
    house.length === 0
      ? []
      : [
          thing(
            'house',
            'building',
            house.map(([x, y]) => typed(x, y)),
          ),
        ];
  const run = push({ entry: 'head', path: 'main' }, [7]);
  const site = yard({
    features: [...features, ...poles, ...building],
    paths,
    runs: [{ ...run, readings: run.readings.map((r) => ({ ...r, ...facts })) }],
  });
  const derived = derive(site);
  const [mark] = derived.marks;
  if (mark?.place == null) throw new Error('the reading has no place');
  return { mark, place: mark.place, derived };
}

describe('paint that cannot stand on its mark', () => {
  it('stands where azimuth and distance lead, with tapes of its own', () => {
    const { place } = marked({ offset: { azimuth: Math.PI / 2, distance: 3 } });
    expect(place.at).toMatchObject({ x: expect.closeTo(7, 12), y: expect.closeTo(0, 12) });
    expect(place.paint?.at).toMatchObject({ x: expect.closeTo(10, 12), y: expect.closeTo(0, 12) });
    const tapes = place.paint?.ties?.pair ?? [];
    expect(tapes).toHaveLength(2);
    for (const { from, distance } of tapes) {
      expect(distance).toBeCloseTo(Math.hypot(from.at.x - 10, from.at.y), 9);
    }
  });

  it('is taped from nowhere when it lies under a roof, while the mark itself is', () => {
    const roof = [
      [9.5, -1],
      [11, -1],
      [11, 1],
      [9.5, 1],
    ] as const;
    const { place } = marked({ offset: { azimuth: Math.PI / 2, distance: 3 } }, roof);
    expect(place.paint?.ties).toBeNull();
    expect(place.ties).not.toBeNull();
  });

  it('is what findings are about: a mark under a roof with its paint outside is no trouble', () => {
    const roof = [
      [6, -1],
      [8, -1],
      [8, 1],
      [6, 1],
    ] as const;
    const codes = (offset: Reading['offset']) =>
      marked(offset === undefined ? {} : { offset }, roof).derived.findings.map((f) => f.code);
    expect(codes(undefined)).toEqual(['mark-under-building']);
    const outside = { azimuth: Math.PI / 2, distance: 3 };
    expect(codes(outside)).toEqual([]);
    const { place } = marked({ offset: outside }, roof);
    expect(place.ties).toBeNull();
    expect(place.paint?.ties).not.toBeNull();
    // half a metre east is still under it: one warning, and of the paint
    expect(codes({ azimuth: Math.PI / 2, distance: 0.5 })).toEqual(['paint-under-building']);
  });

  it('is not there for a mark that can be painted', () => {
    expect(marked({}).place.paint).toBeNull();
  });
});

describe('how far a mark has come', () => {
  it('is what was done on the ground, else whether a receiver found it', () => {
    const { mark, derived } = marked({});
    expect(markState(mark, derived.locates)).toBe('computed');
    const found = { feature: 'f', mark } as (typeof derived.locates)[number]; // only its mark is asked for
    expect(markState(mark, [found])).toBe('located');
    expect(markState(marked({ ground: { state: 'flagged' } }).mark, [found])).toBe('flagged');
  });
});
