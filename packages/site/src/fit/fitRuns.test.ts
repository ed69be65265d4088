import { describe, expect, it } from 'vitest';
import { derive } from '../derive/derive';
import { siteAsDrawn, standingFit } from '../derive/standingFit';
import { openSite, writeSite } from '../document/openSite';
import type { Site } from '../document/site';
import { changePathVertex } from '../edits/pathEdits';
import { removeThing } from '../edits/removeThing';
import { changeReading } from '../edits/runEdits';
import { setAside } from '../edits/siteEdits';
import { dropFit, takeFit } from '../edits/takeFit';
import { movePoint } from '../edits/vertexEdits';
import { pipe, push, ref, thing, typed, yard } from '../testing/yard';
import { fitRuns } from './fitRuns';
import type { RunsFit } from './runsFit';

/** A straight pipe of 20 m from a cleanout to a manhole, a run from each end. */
function site(
  parts: Partial<Site> = {},
  locates: readonly [string, string, number, number, object?][] = [],
): Site {
  return {
    ...yard({
      features: [
        thing('co', 'cleanout', [typed(0, 0)]),
        thing('mh', 'manhole', [typed(20, 0)]),
        ...locates.map(([id, reading, x, y, fields]) =>
          thing(id, 'locate', [typed(x, y)], {
            reading: { run: reading.startsWith('b') ? 'b' : 'a', reading },
            method: 'crossed',
            ...fields,
          }),
        ),
      ],
      paths: [
        pipe('p', [
          { by: 'at', point: ref('co') },
          { by: 'finger', x: 10, y: 0.5 },
          { by: 'at', point: ref('mh') },
        ]),
      ],
      runs: [
        push(
          { id: 'a', letter: 'A', entry: 'co', path: 'p' },
          [4, 8, 12].map((counter, i) => ({ id: `a${i + 1}`, counter })),
        ),
        push(
          { id: 'b', letter: 'B', entry: 'mh', path: 'p', direction: 'against-flow' },
          [4, 8, 12].map((counter, i) => ({ id: `b${i + 1}`, counter })),
        ),
      ],
    }),
    ...parts,
  };
}

function fitOf(of: Site): RunsFit {
  const fit = fitRuns(of, derive(of));
  if (fit === null) throw new Error('nobody stopped it');
  return fit;
}

function taken(of: Site): Site {
  return takeFit(of, { fit: fitOf(of), places: derive(of).points });
}

const located = () =>
  site({}, [
    ['l1', 'a1', 4.1, -0.2],
    ['l2', 'a2', 8.15, -0.5],
    ['l3', 'b2', 11.8, -0.4],
  ]);

describe('without evidence', () => {
  const fit = fitOf(site());

  it('leaves all as drawn and says so', () => {
    expect(fit.status).toBe('no-evidence');
    expect(fit.pending).toBe(0);
    expect(fit.test).toBeNull();
    expect([...fit.marks.values()].every((m) => m.fitted === null)).toBe(true);
  });

  it('makes the zone along the pipe of counter, zero and scale, as errors add up by their squares', () => {
    // by hand: scale 1 % of 12 m, zero 0.05, counter 0.03 and a step of 0.03
    const sigma = Math.hypot(0.12, 0.05, Math.hypot(0.03, 0.03 / Math.sqrt(12)));
    const a3 = fit.marks.get('a3')?.zone;
    const along = a3?.makeUp.filter((m) => m.source !== 'path') ?? [];
    expect(Math.hypot(...along.map((m) => m.along))).toBeCloseTo(sigma, 4);
    const whole = Math.hypot(...(a3?.makeUp.map((m) => m.along) ?? []));
    expect(a3?.along).toBeCloseTo(2.447746831 * whole, 2);
  });

  it('is surest near the end that is tied and least so where it was drawn by eye', () => {
    const across = (id: string) => fit.marks.get(id)?.zone.across ?? 0;
    expect(across('a1')).toBeLessThan(across('a2'));
    expect(across('b1')).toBeLessThan(across('b2'));
  });

  it('widens with what a site says of its own measurements', () => {
    const wide = fitOf(site({ sigmas: { scale: 0.05 } }));
    expect(wide.marks.get('a3')?.zone.along).toBeGreaterThan(2 * (fit.marks.get('a3')?.zone.along ?? 0));
  });
});

describe('with locates', () => {
  const before = located();
  const fit = fitOf(before);

  it('draws the line to where the sonde was found', () => {
    expect(fit.status).toBe('fitted');
    expect(fit.pending).toBeGreaterThan(0.3);
    const a2 = fit.marks.get('a2');
    expect(a2?.fitted?.at.y).toBeLessThan(-0.3);
    expect(a2?.fitted?.zone.semiMajor).toBeLessThan(0.5 * (a2?.zone.semiMajor ?? 0));
  });

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

describe('what does not fit', () => {
  it('names the locate that three others contradict, and what it would have to be', () => {
    const wrong = site({}, [
      ['l1', 'a1', 4, 0.1],
      ['l2', 'a2', 8, 2.6],
      ['l3', 'a2', 8.05, 0.3],
      ['l4', 'b2', 12, 0.4],
    ]);
    const [first] = fitOf(wrong).blunders;
    expect(first?.map((b) => b.name)).toEqual(['locate/l2']);
    expect(first?.[0]?.standardized).toBeGreaterThan(5);
    expect(Math.abs(first?.[0]?.blunder ?? 0)).toBeCloseTo(2.2, 0);
    const without = setAside(wrong, { observation: 'locate/l2', aside: true });
    expect(fitOf(without).blunders).toEqual([]);
    expect(fitOf(without).aside.map((t) => t.is)).toEqual(['locate']);
  });

  it('leaves the zone about the drawing when what was said of it is set aside', () => {
    const shown = (of: Site) => fitOf(of).marks.get('a2')?.zone;
    const aside = setAside(located(), { observation: 'point/p/b', aside: true });
    expect(shown(aside)).toEqual(shown(located()));
  });

  it('says that nothing tells two locates of one reading apart', () => {
    const two = site({ sigmas: { drawnPipePoint: 5, pipeStray: 5 } }, [
      ['l1', 'a2', 8, 3],
      ['l2', 'a2', 8, -3],
    ]);
    const [first] = fitOf(two).blunders;
    expect(first?.map((b) => b.name).sort()).toEqual(['locate/l1', 'locate/l2']);
  });
});

describe('bad input', () => {
  it.each<[string, Site]>([
    ['no path', yard()],
    [
      'all locates in one place',
      site({}, [
        ['l1', 'a1', 4, 0],
        ['l2', 'a2', 4, 0],
        ['l3', 'a3', 4, 0],
      ]),
    ],
    ['a locate far away', site({}, [['l1', 'a1', 900, 900]])],
    [
      'a reading past the end',
      site({ runs: [push({ id: 'a', entry: 'co', path: 'p' }, [{ id: 'a1', counter: 90 }])] }, [
        ['l1', 'a1', 4, 0],
      ]),
    ],
    [
      'readings that go backwards',
      site(
        {
          runs: [
            push({ id: 'a', entry: 'co', path: 'p' }, [
              { id: 'a1', counter: 8 },
              { id: 'a2', counter: 3 },
            ]),
          ],
        },
        [['l1', 'a1', 8, 0]],
      ),
    ],
    [
      'a scale of next to nothing',
      site(
        {
          runs: [
            push({ id: 'a', entry: 'co', path: 'p', scale: { by: 'said', factor: 1e-9 } }, [
              { id: 'a1', counter: 8 },
            ]),
          ],
        },
        [['l1', 'a1', 8, 0]],
      ),
    ],
    [
      'a pair with itself across the ends',
      { ...site(), pairs: [{ id: 'x', a: { run: 'a', reading: 'a1' }, b: { run: 'b', reading: 'b1' } }] },
    ],
    [
      'endlessly wide deviations',
      site({ sigmas: { zero: 1000, scale: 1000, counter: 1000 } }, [['l1', 'a1', 4, 0]]),
    ],
  ])('%s gives a status, not an error, and finite numbers', (_, of) => {
    const copy = structuredClone(of);
    const fit = fitOf(of);
    expect(['no-evidence', 'fitted', 'not-converged', 'undetermined']).toContain(fit.status);
    for (const { zone } of fit.marks.values()) {
      expect(Number.isFinite(zone.semiMajor) && Number.isFinite(zone.hole.length)).toBe(true);
    }
    expect(of).toEqual(copy);
  });

  it('with everything about a zero set aside and nothing in its place says what hangs on nothing', () => {
    const of = setAside(
      { ...site(), pairs: [{ id: 'x', a: { run: 'a', reading: 'a2' }, b: { run: 'b', reading: 'b3' } }] },
      { observation: 'zero/a', aside: true },
    );
    const more = setAside(setAside(of, { observation: 'scale/a', aside: true }), {
      observation: 'zero/b',
      aside: true,
    });
    const fit = fitOf(more);
    expect(fit.status).toBe('undetermined');
    expect(fit.loose.length).toBeGreaterThan(0);
  });

  it('stops when it is asked to', () => {
    const of = located();
    expect(fitRuns(of, derive(of), { shouldStop: () => true })).toBeNull();
  });
});
