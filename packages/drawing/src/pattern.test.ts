import { describe, expect, it } from 'vitest';
import { expandPattern } from './pattern';
import type { PatternName, PatternPrimitive } from './primitive';

const names: readonly PatternName[] = ['fence', 'hedge', 'curb', 'retaining-wall', 'flow'];

function pattern(name: PatternName, length: number): PatternPrimitive {
  return {
    kind: 'pattern',
    pattern: name,
    points: [
      { x: 0, y: 0 },
      { x: length, y: 0 },
    ],
    closed: false,
    spacing: 5,
    stroke: { ink: 'ink', weight: 0.25, dash: [1, 1] },
    target: { kind: 'feature', id: 'f' },
  };
}

describe('expandPattern', () => {
  it.each(names)('%s keeps its target, and has no ornament on a line without length', (name) => {
    const parts = expandPattern(pattern(name, 10), 10);
    expect(parts.length).toBeGreaterThan(0);
    for (const part of parts) expect(part.target).toEqual({ kind: 'feature', id: 'f' });
    expect(expandPattern(pattern(name, 0), 10)).toEqual([]);
  });

  it('sets ornaments apart by paper length: half the scale, half as many', () => {
    expect(expandPattern(pattern('flow', 10), 10)).toHaveLength(20);
    expect(expandPattern(pattern('flow', 10), 5)).toHaveLength(10);
  });

  it('points arrows the way the line goes and dashes no ornament', () => {
    const [arrow] = expandPattern(pattern('flow', 10), 10);
    expect(arrow).toMatchObject({
      kind: 'symbol',
      azimuth: Math.PI / 2,
      stroke: { ink: 'ink', weight: 0.25 },
    });
    expect(arrow?.stroke).not.toHaveProperty('dash');
  });

  it('stays bounded on a mistyped length', () => {
    expect(expandPattern(pattern('fence', 1e6), 1000).length).toBeLessThan(10_000);
  });
});
