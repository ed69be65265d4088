import type { Path } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import type { SymbolPrimitive } from '../primitive';
import {
  drawn,
  labelsOn,
  lateral,
  pointFeature,
  primitivesOn,
  pushed,
  straightSite,
} from '../testing/straightRun';

const at = (x: number, y: number) => ({ by: 'coordinates', x, y }) as const;

/** 6 m north, then 5 m north-east, beside the run's pipe. */
const reroute: Path = {
  ...lateral,
  id: 'n',
  name: 'New line',
  state: 'proposed',
  vertices: [
    { id: 'a', spot: at(3, 0) },
    { id: 'b', spot: at(3, 6) },
    { id: 'c', spot: at(3 + 5 * Math.SQRT1_2, 6 + 5 * Math.SQRT1_2) },
  ],
};
const site = straightSite({
  paths: [lateral, reroute],
  features: [pointFeature('one', 'reference-point', 0, 2), pointFeature('two', 'reference-point', 9, 6)],
  runs: [pushed('A', [{ counter: 5 }])],
});
const symbolsOf = (...of: Parameters<typeof drawn>) =>
  primitivesOn(drawn(...of), 'marks').filter(
    (p): p is SymbolPrimitive => p.kind === 'symbol' && /set-out|chosen/.test(p.symbol),
  );

describe('what sets a proposed pipe out', () => {
  it('is white paint at its ends and at the corner of its bend, each with its label', () => {
    const symbols = symbolsOf(site);
    expect(symbols.map((s) => s.symbol)).toEqual(['set-out-point', 'set-out-bend', 'set-out-point']);
    expect(symbols.every((s) => s.fill?.ink === 'proposed')).toBe(true);
    expect(symbols[1]?.at).toEqual({ x: 3, y: 6 });
    const labels = labelsOn(drawn(site), 'marks').map((l) => l.text);
    expect(labels).toEqual(expect.arrayContaining(['NL-1', 'NL-2', 'NL-3', 'A1']));
  });

  it('is drawn for nothing that is in the ground', () => {
    for (const state of ['existing', 'as-built'] as const) {
      expect(symbolsOf({ ...site, paths: [lateral, { ...reroute, state }] })).toEqual([]);
    }
  });

  it('has the tapes of the chosen point, and a ring about it', () => {
    expect(primitivesOn(drawn(site), 'ties')).toEqual([]);
    const highlight = { setOut: { path: 'n', number: 2 } };
    const tapes = primitivesOn(drawn(site, { highlight }), 'ties').filter((p) => p.kind === 'line');
    expect(tapes.length).toBeGreaterThanOrEqual(2);
    for (const tape of tapes) expect(tape.kind === 'line' && tape.points[1]).toEqual({ x: 3, y: 6 });
    expect(symbolsOf(site, { highlight }).filter((s) => s.symbol === 'mark-chosen')).toMatchObject([
      { at: { x: 3, y: 6 } },
    ]);
    // from (9, 6) straight west, and by Pythagoras from (0, 2): 3 and 4 give 5
    const texts = labelsOn(drawn(site, { highlight }), 'ties').map((l) => l.text);
    expect(texts).toEqual(expect.arrayContaining(['6.00 m', '5.00 m']));
  });
});
