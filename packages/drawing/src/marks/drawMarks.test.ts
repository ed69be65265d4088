import { distance } from '@footmark/geometry';
import { describe, expect, it } from 'vitest';
import type { SymbolPrimitive } from '../primitive';
import { groundStates, markBases } from '../symbols/markSymbolNames';
import { markSymbols } from '../symbols/markSymbols';
import { drawn, labelsOn, pointFeature, primitivesOn, pushed, straightSite } from '../testing/straightRun';

const chosen = { mark: { run: 'A', id: 'A1' } };
const symbolsOn = (...of: Parameters<typeof drawn>) =>
  primitivesOn(drawn(...of), 'marks').filter((p): p is SymbolPrimitive => p.kind === 'symbol');

describe('what was done about a mark', () => {
  it.each(groundStates)('shows in its symbol when it is %s', (state) => {
    const site = straightSite({
      runs: [
        pushed('A', [
          { counter: 5, ground: { state } },
          { counter: 9, seen: 'fitting', ground: { state } },
          { counter: 0.1, seen: 'fitting', ground: { state } },
        ]),
      ],
    });
    expect(symbolsOn(site).map((p) => p.symbol)).toEqual([
      `mark-defect-${state}`,
      `mark-landmark-${state}`,
      `mark-landmark-around-${state}`,
    ]);
  });

  it.each(markBases)('is told by form alone: the five symbols of %s have different parts', (base) => {
    const forms = [base, ...groundStates.map((s) => `${base}-${s}` as const)].map((name) =>
      JSON.stringify(markSymbols[name].parts),
    );
    expect(new Set(forms).size).toBe(1 + groundStates.length);
  });

  it('keeps every part of a mark within the radius that labels keep off', () => {
    const pen = 0.5;
    for (const { parts, clear } of Object.values(markSymbols)) {
      for (const part of parts.filter((p) => p.paint !== 'bare')) {
        const reach =
          part.kind === 'circle'
            ? Math.hypot(part.centre.x, part.centre.y) + part.radius
            : Math.max(...part.points.map((p) => Math.hypot(p.x, p.y)));
        expect(reach).toBeLessThanOrEqual(clear + pen / 2);
      }
    }
  });

  it('leaves what lies in a dug or flagged ring to be read: hatching and flag stay outside of it', () => {
    for (const state of ['dug', 'flagged'] as const) {
      const own = markSymbols[`mark-landmark-around-${state}`].parts.filter((p) => p.kind === 'line');
      expect(own.length).toBeGreaterThan(0);
      for (const { points } of own) {
        for (const p of points) expect(Math.hypot(p.x, p.y)).toBeGreaterThan(2.6 - 1e-9);
      }
    }
  });
});

describe('an offset mark', () => {
  // due west of its place, 3 m
  const offset = { azimuth: (3 * Math.PI) / 2, distance: 3 };
  const site = straightSite({
    features: [
      pointFeature('one', 'reference-point', -8, 4),
      pointFeature('two', 'reference-point', -8, 16),
      pointFeature('three', 'reference-point', 8, 12),
    ],
    runs: [pushed('A', [{ counter: 10, offset }])],
  });

  it('has its symbol and label where it is painted, and an open mark at its place', () => {
    const [arrow, open, mark] = symbolsOn(site);
    expect(mark?.symbol).toBe('mark-defect');
    expect(mark?.at.x).toBeCloseTo(-3, 9);
    expect(mark?.at.y).toBeCloseTo(10, 9);
    expect(open).toMatchObject({ symbol: 'mark-open', at: { x: 0, y: 10 } });
    expect(labelsOn(drawn(site), 'marks').find((l) => l.text === 'A1')?.at).toEqual(mark?.at);
    // the arrow points from the paint to the place: due east
    expect(arrow).toMatchObject({ symbol: 'flow-arrow' });
    expect(arrow?.azimuth).toBeCloseTo(Math.PI / 2, 9);
  });

  it('says the distance to its middle', () => {
    expect(labelsOn(drawn(site), 'marks').map((l) => l.text)).toContain('3.00 m');
  });

  it('is taped where it is painted', () => {
    const tapes = primitivesOn(drawn(site, { highlight: chosen }), 'ties').filter((p) => p.kind === 'line');
    expect(tapes.length).toBeGreaterThanOrEqual(2);
    for (const tape of tapes) {
      const end = tape.kind === 'line' ? tape.points[1] : undefined;
      expect(distance(end ?? { x: 0, y: 0 }, { x: -3, y: 10 })).toBeLessThan(1e-9);
    }
  });
});

describe('a locate', () => {
  const locateAt = (x: number, y: number) =>
    straightSite({
      features: [pointFeature('l', 'locate', x, y, { reading: { run: 'A', reading: 'A1' } })],
      runs: [pushed('A', [{ counter: 10 }], { head: { length: 0.2, zeroed: 'lens' } })],
    });
  const words = {
    located: (mark: string, off: number | null) => `${mark} ${off === null ? 'located' : off.toFixed(3)}`,
  };
  const textOf = (...of: Parameters<typeof drawn>) =>
    labelsOn(drawn(...of), 'survey').find((l) => l.id === 'l/name')?.text;

  it('is joined to where the sonde was computed: a head behind the lens', () => {
    const [line, dot] = primitivesOn(drawn(locateAt(0.1, 9.9)), 'survey').slice(1);
    expect(line?.kind === 'line' && line.points).toEqual([
      { x: 0, y: 9.8 },
      { x: 0.1, y: 9.9 },
    ]);
    expect(dot).toMatchObject({ symbol: 'sonde-computed', at: { x: 0, y: 9.8 } });
  });

  it('is one place when it was found where it was computed', () => {
    expect(primitivesOn(drawn(locateAt(0, 9.8)), 'survey')).toHaveLength(1);
  });

  it('says how far off it is when that is more than 0.3 m, or when it or its mark is chosen', () => {
    expect(textOf(locateAt(0.3, 9.4), { words })).toBe('A1 0.500');
    expect(textOf(locateAt(0, 10), { words })).toBe('A1 located');
    expect(textOf(locateAt(0, 10), { words, highlight: chosen })).toBe('A1 0.200');
    expect(textOf(locateAt(0, 10), { words, highlight: { feature: 'l' } })).toBe('A1 0.200');
    expect(textOf(locateAt(0.3, 9.4))).toBe('A1');
  });
});
