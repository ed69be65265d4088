import { describe, expect, it } from 'vitest';
import { dxfOf, readSound } from './reading';

const thing = (entities: readonly (string | number)[], blocks?: readonly (string | number)[]) => {
  const [first] = readSound(
    dxfOf(entities, { insUnits: 6, ...(blocks === undefined ? {} : { blocks }) }),
  ).things;
  if (first === undefined) throw new Error('nothing read');
  return { ...first, points: first.points.map((p) => [p.first, p.second] as const) };
};

const INSERT = [0, 'INSERT', 8, 'walls', 2, 'b', 10, 100, 20, 50];
const BLOCK = [0, 'BLOCK', 2, 'b', 10, 1, 20, 0, 0, 'LINE', 8, '0', 10, 1, 20, 0, 11, 3, 21, 0, 0, 'ENDBLK'];

// By hand, from the meaning of the groups (DXF reference, from memory).
describe('curves of a drawing', () => {
  it('a bulge of 1 is a half circle on the right of its leg, of −1 on the left', () => {
    const half = (bulge: number) =>
      thing([0, 'LWPOLYLINE', 8, 'a', 90, 2, 70, 0, 10, 0, 20, 0, 42, bulge, 10, 2, 20, 0]);
    for (const [x, y] of half(1).points) expect(Math.hypot(x - 1, y)).toBeCloseTo(1, 12);
    const lowest = Math.min(...half(1).points.map(([, y]) => y));
    expect(lowest).toBeCloseTo(-1, 12);
    expect(Math.max(...half(-1).points.map(([, y]) => y))).toBeCloseTo(1, 12);
    expect(half(1).points.at(-1)).toEqual([2, 0]);
  });

  it('an arc runs counterclockwise from its first angle, over 0 too', () => {
    const { points } = thing([0, 'ARC', 8, 'a', 10, 5, 20, 5, 40, 2, 50, 350, 51, 80]);
    const [x, y] = points[0] ?? [0, 0];
    expect(x).toBeCloseTo(5 + 2 * Math.cos((350 * Math.PI) / 180), 9);
    expect(y).toBeCloseTo(5 + 2 * Math.sin((350 * Math.PI) / 180), 9);
    expect(points.at(-1)?.[1]).toBeCloseTo(5 + 2 * Math.sin((80 * Math.PI) / 180), 9);
    expect(points.length).toBeGreaterThanOrEqual(90 / 5 + 1);
  });

  it('a circle is an outline, a closed polyline too', () => {
    expect(thing([0, 'CIRCLE', 8, 'a', 10, 0, 20, 0, 40, 3])).toMatchObject({ shape: 'area', layer: 'a' });
    const corners = [0, 0, 4, 0, 4, 3].flatMap((v, i) => [i % 2 === 0 ? 10 : 20, v]);
    expect(thing([0, 'LWPOLYLINE', 8, 'a', 70, 1, ...corners]).shape).toBe('area');
  });

  it('what is drawn on the back of the plane has its x the other way', () => {
    const circle = thing([0, 'CIRCLE', 8, 'a', 10, 5, 20, 1, 40, 1, 230, -1]);
    const xs = circle.points.map(([x]) => x);
    expect(Math.min(...xs)).toBeCloseTo(-6, 12);
    expect(Math.max(...xs)).toBeCloseTo(-4, 12);
  });
});

describe('blocks', () => {
  it('are moved to the base point, scaled, and turned counterclockwise; layer 0 is the layer they are put on', () => {
    const line = thing([...INSERT, 41, 2, 42, 1, 50, 90], BLOCK);
    expect(line.layer).toBe('walls');
    // the line from the base point, 2 long, is doubled and points up
    expect(line.points[0]?.[0]).toBeCloseTo(100, 9);
    expect(line.points[0]?.[1]).toBeCloseTo(50, 9);
    expect(line.points[1]?.[0]).toBeCloseTo(100, 9);
    expect(line.points[1]?.[1]).toBeCloseTo(54, 9);
  });

  it('in blocks are put down by both', () => {
    const outer = [0, 'BLOCK', 2, 'c', 10, 0, 20, 0, 0, 'INSERT', 8, '0', 2, 'b', 10, 10, 20, 0, 0, 'ENDBLK'];
    const line = thing([0, 'INSERT', 8, 'yard', 2, 'c', 10, 0, 20, 5, 50, 180], [...BLOCK, ...outer]);
    expect(line.layer).toBe('yard');
    expect(line.points[0]?.[0]).toBeCloseTo(-10, 9);
    expect(line.points[1]?.[0]).toBeCloseTo(-12, 9);
    expect(line.points[1]?.[1]).toBeCloseTo(5, 9);
  });

  it('on paper sheets are left out and counted', () => {
    const { notes, things } = readSound(
      dxfOf([0, 'POINT', 8, 'a', 10, 0, 20, 0, 0, 'LINE', 67, 1, 8, 'a', 10, 0, 20, 0, 11, 1, 21, 1]),
    );
    expect(things.length).toBe(1);
    expect(notes).toEqual([{ code: 'paper-left-out', count: 1 }]);
  });
});
