import { describe, expect, it } from 'vitest';
import { openSiteValue } from '../document/openSite';
import { pipe, push, square, tee, thing, typed, yard } from '../testing/yard';
import { addFeature, nameFeature, setField } from './featureEdits';
import { addPath, changePath, changePathVertex, removeStretch, setStretch } from './pathEdits';
import {
  addReading,
  addRun,
  changeReading,
  changeRun,
  freeRunLetter,
  nextReadingNumber,
  removeReading,
} from './runEdits';
import { changeSite, newSite } from './siteEdits';

const site = yard({ ...tee(), runs: [push({ entry: 'head', path: 'main' }, [3, 7])] });

describe('a new site', () => {
  it('is sound, empty and of the given units', () => {
    const fresh = newSite({
      id: 's',
      name: 'Back yard',
      createdAt: '2026-03-04T05:06:07Z',
      units: { length: 'ft-in', diameter: 'in', direction: 'bearing' },
    });
    expect(openSiteValue(fresh)).toMatchObject({ ok: true, site: fresh });
    expect(fresh.tape.length).toBeCloseTo(30.48, 9); // a 100 ft tape
  });

  it('changes what it says of itself', () => {
    expect(changeSite(site, { name: 'Other', entryReach: 0.5 })).toEqual({
      ...site,
      name: 'Other',
      entryReach: 0.5,
    });
  });
});

describe('edits of features', () => {
  it('add, name and fill in', () => {
    const oak = thing('oak', 'tree', [typed(1, 1)]);
    const planted = addFeature(site, { feature: oak });
    expect(planted.features.at(-1)).toBe(oak);
    expect(planted.features[0]).toBe(site.features[0]);
    const named = nameFeature(planted, { id: 'oak', name: 'Old oak' });
    const measured = setField(named, { id: 'oak', field: 'trunkDiameter', value: 0.6 });
    expect(measured.features.at(-1)).toMatchObject({ name: 'Old oak', fields: { trunkDiameter: 0.6 } });
    const cleared = setField(measured, { id: 'oak', field: 'trunkDiameter', value: undefined });
    expect(cleared.features.at(-1)?.fields).toEqual({});
    expect(oak.fields).toEqual({});
    expect(() => nameFeature(site, { id: 'gone', name: '' })).toThrow('gone');
    expect(openSiteValue(addFeature(measured, { feature: square('h', 'building', 0, 0, 2) })).ok).toBe(true);
  });
});

describe('edits of paths', () => {
  const clay = { material: 'clay', diameter: 0.1, slope: 0.02 } as const;
  const fromOf = (s: typeof site) => s.paths[0]?.stretches.map((stretch) => stretch.from);

  it('add one, and say what it is', () => {
    const path = pipe('new', [typed(0, 0), typed(1, 0)]);
    const added = addPath(site, { path });
    expect(changePath(added, { id: 'new', facts: { state: 'proposed' } }).paths.at(-1)).toEqual({
      ...path,
      state: 'proposed',
    });
  });

  it('set and clear a fitting and a drop', () => {
    const set = changePathVertex(site, { id: 'main', at: 'b', facts: { bendRadius: 0.3, drop: 1 } });
    expect(set.paths[0]?.vertices[1]).toMatchObject({ id: 'b', bendRadius: 0.3, drop: 1 });
    const cleared = changePathVertex(set, {
      id: 'main',
      at: 'b',
      facts: { bendRadius: undefined, drop: undefined },
    });
    expect(cleared).toEqual(site);
    expect(() => changePathVertex(site, { id: 'main', at: 'q', facts: { drop: 1 } })).toThrow('q');
  });

  it('keep stretches in order, one at a station, and the first for good', () => {
    const two = setStretch(setStretch(site, { id: 'main', stretch: { from: 9, ...clay } }), {
      id: 'main',
      stretch: { from: 4, ...clay },
    });
    expect(fromOf(two)).toEqual([0, 4, 9]);
    const plastic = { from: 4, material: 'plastic', diameter: 0.1, slope: 0 } as const;
    expect(setStretch(two, { id: 'main', stretch: plastic }).paths[0]?.stretches[1]).toEqual(plastic);
    expect(fromOf(removeStretch(two, { id: 'main', from: 4 }))).toEqual([0, 9]);
    expect(fromOf(removeStretch(two, { id: 'main', from: 0 }))).toEqual([0, 4, 9]);
    expect(() => removeStretch(two, { id: 'main', from: 5 })).toThrow('main@5');
    expect(openSiteValue(two).ok).toBe(true);
  });
});

describe('edits of runs', () => {
  const run = site.runs[0] ?? push({});

  it('start one with the first free letter', () => {
    expect(freeRunLetter([])).toBe('A');
    expect(
      freeRunLetter([
        { ...run, letter: 'A' },
        { ...run, letter: 'C' },
      ]),
    ).toBe('B');
    const added = addRun(site, { run: push({ id: 'second', letter: freeRunLetter(site.runs) }) });
    expect(added.runs.map((r) => r.letter)).toEqual(['A', 'B']);
    expect(changeRun(added, { id: 'second', facts: { resolution: 0.1 } }).runs[1]?.resolution).toBe(0.1);
  });

  it('add, change and take out readings, whose numbers stay as painted', () => {
    expect(nextReadingNumber(run)).toBe(3);
    expect(nextReadingNumber(push({}))).toBe(1);
    const reading = { id: 'x', number: 3, counter: 5, seen: 'roots', passed: true, note: '' } as const;
    const three = addReading(site, { run: 'run', reading });
    const two = removeReading(three, { run: 'run', id: 'r1' });
    expect(two.runs[0]?.readings.map((r) => r.number)).toEqual([2, 3]);
    const changed = changeReading(two, {
      run: 'run',
      id: 'x',
      facts: { counter: 6, seen: 'crack', passed: false, note: 'wide' },
    });
    expect(changed.runs[0]?.readings[1]).toEqual({
      id: 'x',
      number: 3,
      counter: 6,
      seen: 'crack',
      passed: false,
      note: 'wide',
    });
    expect(() => removeReading(site, { run: 'run', id: 'q' })).toThrow('q');
    expect(site.runs[0]?.readings).toHaveLength(2);
  });
});
