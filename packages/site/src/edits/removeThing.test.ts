import { describe, expect, it } from 'vitest';
import { derive } from '../derive/derive';
import { openSiteValue } from '../document/openSite';
import { push, ref, tee, thing, yard } from '../testing/yard';
import { removeThing } from './removeThing';

const site = yard({
  ...tee(),
  features: [
    ...tee().features,
    thing('tree', 'tree', [
      {
        by: 'tapes',
        tapes: [
          { from: ref('head'), distance: 6 },
          { from: ref('end'), distance: 16 },
        ],
        side: 'left',
      },
    ]),
  ],
  runs: [
    push({ entry: 'head', path: 'main' }, [3]),
    push({
      id: 'up',
      letter: 'B',
      entry: 'end',
      path: 'main',
      direction: 'against-flow',
      branches: ['branch'],
    }),
  ],
});
const { points } = derive(site);
const without = (id: string) => {
  const left = removeThing(site, { id, places: points });
  const opened = openSiteValue(left);
  if (!opened.ok) expect.fail(JSON.stringify(opened.failure));
  return left;
};

describe('removeThing', () => {
  it('leaves in place what was measured from a feature, and the run without an entry', () => {
    const left = without('head');
    expect(left.features.map((f) => f.id)).toEqual(['side', 'end', 'tree']);
    expect(derive(left).points.get('tree/a')?.at).toEqual(points.get('tree/a')?.at);
    expect(left.features[2]?.vertices[0]?.spot.by).toBe('finger');
    expect(left.runs[0]).toMatchObject({ entry: null, path: 'main', readings: [{ counter: 3 }] });
    expect(left.runs[1]).toBe(site.runs[1]);
  });

  it('frees a branch from its path, and the runs from both', () => {
    const left = without('main');
    expect(left.paths.map((p) => p.id)).toEqual(['branch']);
    expect(derive(left).points.get('branch/b')?.at).toEqual({ x: 10, y: 0 });
    expect(left.runs.map((r) => r.path)).toEqual([null, null]);
    expect(without('branch').runs[1]).toMatchObject({ path: 'main', branches: [] });
  });

  it('takes out a run with its readings', () => {
    expect(without('run').runs.map((r) => r.id)).toEqual(['up']);
  });

  it('throws on a name that the site does not have', () => {
    expect(() => removeThing(site, { id: 'gone', places: points })).toThrow('gone');
  });
});
