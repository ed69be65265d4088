import { distance } from '@footmark/geometry';
import { derive, newSite, type Site } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { finishPath } from './finishDraft';
import { type DraftPoint, startDraw, withPoint } from './tool';

const units = { length: 'm', diameter: 'mm', direction: 'azimuth' } as const;

function withLateral(): Site {
  const tool = [
    { spot: { by: 'coordinates', x: 0, y: 0 } },
    { spot: { by: 'coordinates', x: 0, y: -20 } },
    { spot: { by: 'coordinates', x: 0, y: -40 } },
  ].reduce((t, point) => withPoint(t, point as DraftPoint), startDraw({ what: 'path' }, 'line'));
  const empty = newSite({ id: 's', name: 's', createdAt: '2026-01-01T00:00:00Z', units });
  return finishPath(empty, tool, 'main', 'Lateral', derive(empty));
}

describe('finishPath', () => {
  it('turns a branch that was drawn from its junction round, and keeps its typed legs where they were typed', () => {
    const site = withLateral();
    const points: readonly DraftPoint[] = [
      { spot: { by: 'at', point: { of: 'main', at: 'b' } } },
      { spot: { by: 'course', azimuth: Math.PI / 4, distance: 10 } },
      { spot: { by: 'turn', turn: Math.PI / 4, distance: 5 } },
    ];
    const tool = points.reduce(withPoint, startDraw({ what: 'path' }, 'line'));
    const branch = derive(finishPath(site, tool, 'branch', 'Branch', derive(site))).paths.get('branch');
    expect(branch?.joins).toMatchObject({ path: 'main', vertex: 'b' });
    const side = 10 * Math.SQRT1_2; // 10 at 45°, then 5 due east
    const expected = [
      { x: side + 5, y: side - 20 },
      { x: side, y: side - 20 },
      { x: 0, y: -20 },
    ];
    expect(branch?.points).toHaveLength(3);
    for (const [i, p] of expected.entries()) {
      expect(distance(branch?.points[i] ?? { x: 99, y: 99 }, p)).toBeLessThan(1e-9);
    }
    expect(branch?.measured).toEqual([true, true, true]);
  });

  it('leaves a pipe that runs with the flow as it was drawn', () => {
    expect(withLateral().paths[0]?.vertices.map((v) => v.spot.by)).toEqual([
      'coordinates',
      'coordinates',
      'coordinates',
    ]);
  });
});
