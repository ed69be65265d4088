import { describe, expect, it } from 'vitest';
import type { AsFound } from '../document/asFound';
import { movePoint, moveThings, setSpot } from '../edits/vertexEdits';
import { find, foundYard, given } from '../testing/foundYard';
import { pipe, ref, typed } from '../testing/yard';
import { derive } from './derive';

const at = (x: number, y: number) => ({ x: expect.closeTo(x, 9), y: expect.closeTo(y, 9) });

function placeOf(found: AsFound, site = foundYard([found])) {
  const [place] = derive(site).found;
  if (place === undefined) return expect.fail('the record has no line');
  return place;
}

describe('what a crew found', () => {
  it('lies so far along the pipe and to the right of the paint', () => {
    // the pipe runs east: right of the flow is south
    const place = placeOf(find({ id: 'f1', given, where: { by: 'paint', along: 0.5, right: 0.2 } }));
    expect(place.at).toEqual(at(4.5, -0.2));
    expect(place.off).toEqual({
      along: expect.closeTo(0.5, 9),
      across: expect.closeTo(0.2, 9),
      distance: expect.closeTo(Math.hypot(0.5, 0.2), 9),
    });
    expect(place).toMatchObject({
      label: 'A1',
      paint: at(4, 0),
      sought: { path: 'p', station: 4 },
    });
  });

  it('lies against the flow and to the left where the numbers are negative', () => {
    const place = placeOf(find({ id: 'f1', given, where: { by: 'paint', along: -1, right: -2 } }));
    expect(place.at).toEqual(at(3, 2));
  });

  it('lies where two tapes put it, on the side that is said', () => {
    const tapes = [
      { from: ref('p1'), distance: Math.hypot(5, 3.5) },
      { from: ref('p2'), distance: Math.hypot(3, 3.5) },
    ];
    const right = placeOf(find({ id: 'f1', where: { by: 'tapes', tapes, side: 'right' } }));
    expect(right.at).toEqual(at(5, -0.5));
    const left = placeOf(find({ id: 'f1', where: { by: 'tapes', tapes, side: 'left' } }));
    expect(left.at).toEqual(at(5, 6.5));
  });

  it('is taped from the near face of what is taped so', () => {
    // the tree at (4, 4) has a radius of 0.2 m: 3.8 m of tape reach (4, 0)
    const tapes = [
      { from: ref('t1'), distance: 3.8 },
      { from: ref('p1'), distance: 5 },
    ];
    expect(placeOf(find({ id: 'f1', where: { by: 'tapes', tapes, side: 'left' } })).at).toEqual(at(4, 0));
  });

  it('counts from where the paint stands, not from where the mark would stand now', () => {
    // the pipe is drawn anew 0.8 m to the north: the paint stays where the tapes put it
    const site = foundYard([find({ id: 'f1', given, where: { by: 'paint', along: 0, right: 0 } })]);
    const moved = setSpot(
      setSpot(setSpot(site, { ref: ref('p', 'a'), spot: typed(0, 0.8) }), {
        ref: ref('p', 'b'),
        spot: typed(10, 0.8),
      }),
      { ref: ref('p', 'c'), spot: typed(20, 0.8) },
    );
    const derived = derive(moved);
    expect(derived.found[0]).toMatchObject({ at: at(4, 0), moved: expect.closeTo(0.8, 9) });
    expect(derived.found[0]?.off?.across).toBeCloseTo(0.8, 9);
    expect(derived.findings).toContainEqual(
      expect.objectContaining({
        code: 'as-found-mark-moved',
        at: { kind: 'reading', run: 'run', id: 'r1' },
        values: { label: 'A1', by: 'Crew one', moved: expect.closeTo(0.8, 9) },
      }),
    );
  });

  it('goes with the references that it was set out from, when a whole yard is moved', () => {
    const site = foundYard([find({ id: 'f1', given, where: { by: 'paint', along: 0.5, right: 0.2 } })]);
    const ids = [...site.features, ...site.paths].map(({ id }) => id);
    const [place] = derive(moveThings(site, { ids, by: { x: 100, y: -40 } })).found;
    expect(place?.at).toEqual(at(104.5, -40.2));
    expect(place?.off).toMatchObject({ along: expect.closeTo(0.5, 9), across: expect.closeTo(0.2, 9) });
  });

  it('without a place, is a record all the same', () => {
    expect(placeOf(find({ id: 'f1', given }))).toMatchObject({ at: null, off: null, paint: at(4, 0) });
    const free = placeOf(
      find({ id: 'f1', about: { is: 'place' }, where: { by: 'coordinates', x: 1, y: 2 } }),
    );
    expect(free).toMatchObject({ label: '', at: { x: 1, y: 2 }, sought: null, off: null });
    const nothing = find({ id: 'f1', about: { is: 'place' }, where: { by: 'paint', along: 1, right: 1 } });
    expect(placeOf(nothing).at).toBeNull();
  });

  it('at a point that sets a pipe out is told beside that point', () => {
    const about = { is: 'set-out', path: 'new', number: 2 } as const;
    const site = foundYard([
      find({
        id: 'f1',
        about,
        given: { ...given, label: 'NW-2', at: { x: 5, y: -3 }, ties: [] },
        where: { by: 'paint', along: 0.1, right: 0 },
      }),
    ]);
    const proposed = pipe('new', [typed(0, -3), typed(5, -3), typed(9, -3)], {
      state: 'proposed',
      name: 'New',
    });
    const [place] = derive({ ...site, paths: [...site.paths, proposed] }).found;
    expect(place).toMatchObject({ at: at(5.1, -3), off: { along: expect.closeTo(0.1, 9) } });
  });
});

describe('what is said of finds', () => {
  const said = (...found: AsFound[]) =>
    derive(foundYard(found)).findings.filter(({ code }) => code.startsWith('as-found'));
  const offset = (along: number, right = 0) => ({ by: 'paint', along, right }) as const;

  it('that agree is nothing', () => {
    const depth = { to: 'top', depth: 1.2 } as const;
    expect(
      said(
        find({ id: 'f1', given, where: offset(0.1), depth }),
        find({ id: 'f2', given, where: offset(0.2), depth, by: 'Crew two' }),
      ),
    ).toEqual([]);
  });

  it('in two places or at two depths is that they disagree, and by how much', () => {
    const one = find({ id: 'f1', given, where: offset(0.1), depth: { to: 'top', depth: 1.2 } });
    const two = find({
      id: 'f2',
      given,
      where: offset(0.7),
      by: 'Crew two',
      depth: { to: 'top', depth: 1.6 },
    });
    const values = { label: 'A1', a: 'Crew one', b: 'Crew two' };
    expect(said(one, two)).toMatchObject([
      { code: 'as-found-disagree', values: { ...values, apart: expect.closeTo(0.6, 9) } },
      { code: 'as-found-depths-disagree', values: { ...values, apart: expect.closeTo(0.4, 9) } },
    ]);
    // a top and an invert are two depths of one pipe
    expect(said(one, { ...two, where: offset(0.1), depth: { to: 'invert', depth: 1.6 } })).toEqual([]);
  });

  it('of two marks is nothing, however far apart they are', () => {
    const two = find({ id: 'f2', about: { is: 'mark', run: 'run', reading: 'r2' }, where: offset(0) });
    expect(said(find({ id: 'f1', given, where: offset(0) }), two).map((f) => f.code)).toEqual([
      'as-found-no-place',
    ]);
  });

  it('one of which is none, is said', () => {
    const none = find({ id: 'f2', state: 'not-found', by: 'Crew two' });
    expect(said(find({ id: 'f1' }), none)).toMatchObject([
      { code: 'as-found-and-not-found', severity: 'note', values: { a: 'Crew one', b: 'Crew two' } },
    ]);
  });

  it('at a mark that is gone, is said of the site', () => {
    const gone = find({ id: 'f1', given, about: { is: 'mark', run: 'run', reading: 'old' } });
    expect(said(gone)).toMatchObject([
      { code: 'as-found-mark-gone', at: { kind: 'site' }, values: { label: 'A1', by: 'Crew one' } },
    ]);
  });

  it('taped from what is gone, or by tapes that do not meet, is that it has no place', () => {
    const tapes = [
      { from: ref('gone'), distance: 4 },
      { from: ref('p2'), distance: 4 },
    ];
    const short = tapes.map(({ distance }, i) => ({ from: ref(`p${i + 1}`), distance: distance / 2 }));
    for (const pulled of [tapes, short]) {
      const where = { by: 'tapes', tapes: pulled, side: 'left' } as const;
      expect(said(find({ id: 'f1', where })).map((f) => f.code)).toEqual(['as-found-no-place']);
    }
  });

  it('stands by the paint that was given: a mark that moved less than paint is wide is the same', () => {
    const site = foundYard([find({ id: 'f1', given })]);
    const codes = (dy: number) => {
      const moved = ['a', 'b', 'c'].reduce(
        (now, v, i) =>
          movePoint(now, { ref: ref('p', v), to: { x: i * 10, y: dy }, places: derive(now).points }),
        site,
      );
      return derive(moved)
        .findings.map((f) => f.code)
        .filter((code) => code.startsWith('as-found'));
    };
    expect(codes(0.04)).toEqual([]);
    expect(codes(0.06)).toEqual(['as-found-mark-moved']);
  });
});

describe('how good the computation is by what was laid bare', () => {
  it('rests on the latest find of each mark', () => {
    // FGDC-STD-007.3-1998, 3-A: one check point 0.3 m off along x alone; its RMSE_r is 0.3 m
    const early = find({ id: 'f1', given, where: { by: 'paint', along: 2, right: 0 } });
    const late = find({
      id: 'f2',
      given,
      at: '2026-05-20T13:00:00-05:00',
      where: { by: 'paint', along: 0.3, right: 0 },
    });
    const { foundAccuracy } = derive(foundYard([late, early]));
    expect(foundAccuracy).toMatchObject({ count: 1, rmse: expect.closeTo(0.3, 9), independent: true });
    expect(derive(foundYard()).foundAccuracy).toBeNull();
  });
});
