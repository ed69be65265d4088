import { describe, expect, it } from 'vitest';
import { derive } from '../derive/derive';
import { siteAsDrawn, standingFit } from '../derive/standingFit';
import { openSite, writeSite } from '../document/openSite';
import type { Site } from '../document/site';
import { fitOf, located, pushedFromBothEnds as site, taken } from '../testing/fitting';
import { ref, thing } from '../testing/yard';
import { changePathVertex } from './pathEdits';
import { removeThing } from './removeThing';
import { changeReading } from './runEdits';
import { dropFit, takeFit } from './takeFit';
import { movePoint } from './vertexEdits';

describe('a fit that is taken', () => {
  const before = located();
  const fit = fitOf(before);

  it('is taken as an edit whose marks are where it said, with nothing left to move', () => {
    const after = taken(before);
    const derived = derive(after);
    const again = fitOf(after);
    expect(again.taken).toBe(true);
    expect(again.pending).toBe(0);
    for (const [id, mark] of fit.marks) {
      const shown = derived.marks.find((m) => m.reading.id === id)?.place?.at;
      expect(
        Math.hypot((shown?.x ?? 9) - (mark.fitted?.at.x ?? 0), (shown?.y ?? 9) - (mark.fitted?.at.y ?? 0)),
        id,
      ).toBeLessThan(0.02);
    }
  });

  it('is written to the file with its evidence and read back', () => {
    const opened = openSite(writeSite(taken(before)));
    if (!opened.ok) expect.fail(JSON.stringify(opened.failure));
    expect(standingFit(opened.site)).not.toBeNull();
    expect(opened.site.fit?.evidence.map((e) => e.observation)).toEqual([
      'locate/l1',
      'locate/l1',
      'locate/l2',
      'locate/l2',
      'locate/l3',
      'locate/l3',
    ]);
  });

  it('goes back to what was drawn', () => {
    const after = taken(before);
    const back = dropFit(after, { places: derive(after).points });
    expect(back).toEqual(before);
    expect(siteAsDrawn(after).paths).toEqual(before.paths);
  });

  it('is history after a change by hand to its line, which keeps its place', () => {
    const after = taken(before);
    const places = derive(after).points;
    const moved = movePoint(after, { ref: ref('p', 'b'), to: { x: 10, y: 1 }, places });
    expect(standingFit(moved)).toBeNull();
    expect(derive(moved).paths.get('p')?.points.at(-1)).toEqual(derive(after).paths.get('p')?.points.at(-1));
    expect(fitOf(moved).taken).toBe(false);
  });

  it('can be taken again after more was found, from the same drawing', () => {
    const after = taken(before);
    const more = {
      ...after,
      features: [...after.features, ...site({}, [['l4', 'b1', 16, -0.9]]).features.slice(2)],
    };
    const fresh = fitOf(more);
    expect(fresh.pending).toBeGreaterThan(0);
    const twice = takeFit(more, { fit: fresh, places: derive(more).points });
    expect(twice.fit?.paths[0]?.drawn).toEqual(before.paths[0]?.vertices);
    expect(fitOf(twice).pending).toBe(0);
  });

  const withMore = (of: Site, extra: Parameters<typeof site>[1]): Site => ({
    ...of,
    features: [...of.features, ...site({}, extra).features.slice(2)],
  });

  it('leaves points by eye where they were, and gives the others what they were worth before it', () => {
    const [path] = taken(located()).paths;
    const spots = new Map(path?.vertices.map((v) => [v.id, v.spot]));
    expect(spots.get('b')).toMatchObject({ by: 'finger' });
    const added = [...spots].flatMap(([id, spot]) => (['a', 'b', 'c'].includes(id) ? [] : [spot]));
    expect(added.length).toBeGreaterThan(0);
    for (const spot of added) expect(spot).toMatchObject({ by: 'coordinates', sigma: expect.any(Number) });
  });

  it('is weighed anew once it is history, with zones no smaller than its own', () => {
    const after = taken(located());
    const moved = movePoint(after, {
      ref: ref('p', 'b'),
      to: { x: 10, y: 0.4 },
      places: derive(after).points,
    });
    const [fit, history] = [fitOf(after), fitOf({ ...moved, features: moved.features.slice(0, 2) })];
    expect(history.status).toBe('no-evidence');
    for (const [id, { zone }] of history.marks)
      expect(zone.across, id).toBeGreaterThan(fit.marks.get(id)?.zone.across ?? 9);
  });

  it('keeps the names and the facts of the points that it added when more was found', () => {
    const after = taken(located());
    const added = after.fit?.paths[0]?.added ?? [];
    expect(added.length).toBeGreaterThan(0);
    const level = { is: 'invert', level: 3 } as const;
    const levelled = changePathVertex(after, { id: 'p', at: added[0]?.vertex ?? '', facts: { level } });
    const more = withMore(levelled, [['l0', 'a1', 2, -0.4]]);
    const twice = takeFit(more, { fit: fitOf(more), places: derive(more).points });
    const again = twice.fit?.paths[0]?.added ?? [];
    for (const { vertex, locate } of added) expect(again).toContainEqual({ vertex, locate });
    expect(twice.paths[0]?.vertices.find((v) => v.id === added[0]?.vertex)?.level).toEqual(level);
    const ids = twice.paths[0]?.vertices.map((v) => v.id) ?? [];
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('counts a reading that was read otherwise since as it is read', () => {
    const after = taken(located());
    const along = (of: Site) =>
      derive(of).marks.find((m) => m.reading.id === 'a2')?.trace?.along ?? Number.NaN;
    const changed = changeReading(after, { run: 'a', id: 'a2', facts: { counter: 9 } });
    expect(standingFit(changed)).not.toBeNull();
    const run = after.fit?.runs.find((r) => r.id === 'a');
    expect(along(changed)).toBeCloseTo((9 - (run?.zero ?? 0)) * (run?.scale ?? 0), 6);
    expect(Math.abs(along(after) - (8 - (run?.zero ?? 0)) * (run?.scale ?? 0))).toBeGreaterThan(1e-6);
  });

  it('does not stand when what its lines were drawn from is gone, and lines stay', () => {
    const plain = located();
    const [of] = plain.paths;
    if (of === undefined) throw new Error('no pipe');
    const vertices = of.vertices.map((v) =>
      v.id === 'b' ? { ...v, spot: { by: 'at', point: ref('oak') } as const } : v,
    );
    const features = [...plain.features, thing('oak', 'tree', [{ by: 'finger', x: 10, y: 0.5 }])];
    const after = taken({ ...plain, features, paths: [{ ...of, vertices }] });
    expect(standingFit(after)).not.toBeNull();
    const felled = removeThing(after, { id: 'oak', places: derive(after).points });
    expect(standingFit(felled)).toBeNull();
    expect(felled.paths).toEqual(after.paths);
    expect(dropFit(felled, { places: derive(felled).points }).paths).toEqual(after.paths);
  });

  it('leaves a shown mark its distance from the fit in its zone until that is taken', () => {
    const after = taken(before);
    const more = {
      ...after,
      features: [...after.features, ...site({}, [['l4', 'b1', 16, -0.9]]).features.slice(2)],
    };
    const fresh = fitOf(more);
    const b1 = fresh.marks.get('b1');
    expect(b1?.zone.across).toBeGreaterThan(b1?.fitted?.zone.across ?? 9);
  });
});
