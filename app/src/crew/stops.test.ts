import { addPath, derive, fitRuns, openSite, type Path } from '@footmark/site';
import sample from '@footmark/site/samples/rear-alley.json?raw';
import { describe, expect, it } from 'vitest';
import { crewHole, givenAt, holeAt, indexOf, placeOf, stopsOf } from './stops';

const opened = openSite(sample);
if (!opened.ok) throw new Error('the sample does not open');
const proposed: Path = {
  id: 'new',
  name: 'New drain',
  state: 'proposed',
  vertices: [
    { id: 'a', spot: { by: 'coordinates', x: 0, y: 0 } },
    { id: 'b', spot: { by: 'coordinates', x: 3, y: 0 } },
    { id: 'c', spot: { by: 'coordinates', x: 6, y: 3 } },
  ],
  bendRadius: 0,
  stretches: [{ from: 0, material: 'plastic', diameter: 0.1, slope: 0.02 }],
};
const site = addPath(opened.site, { path: proposed });
const derived = derive(site);
const stops = stopsOf(site, derived);

describe('where a crew goes', () => {
  it('are the marks that have a place, then the points of new pipes', () => {
    const placed = derived.marks.filter((m) => m.place !== null).map((m) => m.label);
    expect(placed.length).toBeGreaterThan(10);
    expect(stops.slice(0, placed.length).map((s) => s.label)).toEqual(placed);
    const rest = stops.slice(placed.length);
    expect(rest.length).toBeGreaterThanOrEqual(3);
    expect(rest.every((s) => s.target.kind === 'set-out' && /^[A-Z]+-\d+$/.test(s.label))).toBe(true);
    expect(new Set(stops.map((s) => s.key)).size).toBe(stops.length);
  });

  it('look along the pipe: at the last point of the new one to the north-east', () => {
    expect(stops.at(-1)?.flow).toBeCloseTo(Math.PI / 4, 9);
    expect(stops.at(-1)?.at).toEqual({ x: expect.closeTo(6, 9), y: expect.closeTo(3, 9) });
  });

  it('stay the same for a crew while others remove a mark before it', () => {
    const at = placeOf(stops, 3);
    const [gone] = stops;
    const fewer = {
      ...site,
      runs: site.runs.map((run) => ({
        ...run,
        readings: run.readings.filter((r) => gone?.target.kind !== 'reading' || r.id !== gone.target.id),
      })),
    };
    const left = stopsOf(fewer, derive(fewer));
    expect(left).toHaveLength(stops.length - 1);
    expect(left[indexOf(left, at)]?.key).toBe(stops[3]?.key);
    // what is gone itself gives way to what comes after it
    expect(left[indexOf(left, placeOf(stops, 0))]?.key).toBe(stops[1]?.key);
    expect(indexOf([], at)).toBe(0);
  });

  it('give the crew the same tapes that the mark’s own card has', () => {
    const stop = stops.find((s) => s.is.what === 'mark' && s.is.place.ties?.check);
    if (stop?.is.what !== 'mark') return expect.fail('a mark has a third tape');
    const { ties } = stop.is.place;
    expect(givenAt(stop)).toEqual({
      label: stop.label,
      at: stop.is.place.at,
      flow: stop.is.place.flow,
      ties: [ties?.pair[0], ties?.pair[1], ties?.check].map((t) => ({
        from: t?.from.ref,
        distance: t?.distance,
      })),
      side: ties?.side,
    });
  });

  it('have the hole that the fit asks for, and a metre square where none does', () => {
    const fit = fitRuns(site, derived);
    const [mark] = stops;
    const last = stops.at(-1);
    if (mark === undefined || last === undefined || fit === null) return expect.fail('there are stops');
    const hole = holeAt(mark, fit);
    expect(hole).toBe(fit.marks.get(derived.marks[0]?.reading.id ?? '')?.zone.hole);
    expect(crewHole(mark, hole)).toMatchObject({ along: mark.flow, length: hole?.length });
    expect(holeAt(last, fit)).toBeNull();
    expect(crewHole(last, null)).toMatchObject({ at: last.at, length: 1, width: 1 });
  });

  it('of a mark that cannot be painted is the paint beside it, with the tapes to the paint', () => {
    const [run] = site.runs;
    const reading = run?.readings.find((r) =>
      stops.some((s) => s.target.kind === 'reading' && s.target.id === r.id),
    );
    if (run === undefined || reading === undefined) return expect.fail('the sample has marks');
    const beside = {
      ...site,
      runs: [
        {
          ...run,
          readings: run.readings.map((r) =>
            r === reading ? { ...r, offset: { azimuth: Math.PI / 2, distance: 2 } } : r,
          ),
        },
        ...site.runs.slice(1),
      ],
    };
    const stop = stopsOf(beside, derive(beside)).find(
      (s) => s.target.kind === 'reading' && s.target.id === reading.id,
    );
    expect(stop?.paint).toEqual({
      x: expect.closeTo((stop?.at.x ?? 0) + 2, 9),
      y: expect.closeTo(stop?.at.y ?? 0, 9),
    });
    expect(stop === undefined ? null : givenAt(stop).at).toEqual(stop?.paint);
  });
});
