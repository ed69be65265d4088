import { describe, expect, it } from 'vitest';
import { openSite, writeSite } from '../document/openSite';
import type { Site } from '../document/site';
import type { Spot } from '../document/spot';
import { pipe, push, ref, tee, thing, typed, yard } from '../testing/yard';
import { addDig, changeDig } from './digEdits';
import { addFeature, setField } from './featureEdits';
import { addControl } from './frameEdits';
import { addPath, changePath, changePathVertex, setStretch } from './pathEdits';
import { addReading, changeRun } from './runEdits';
import { changeSite } from './siteEdits';
import { soundEdit } from './soundEdit';
import { movePoint, setSpot } from './vertexEdits';

const fence = thing('fence', 'fence', [typed(0, 0), { by: 'course', azimuth: 0, distance: 5 }]);
const parts = tee();
const site = yard({
  ...parts,
  features: [...parts.features, fence],
  runs: [push({ entry: 'head', path: 'main' }, [3, 7])],
});
const stretch = { from: 4, material: 'clay', diameter: 0.1, slope: 0.02 } as const;
const control = {
  id: 'k',
  point: ref('head'),
  latitudeDeg: 45,
  longitudeDeg: 7,
  accuracy: 3,
  source: 'typed',
} as const;
const reading = { id: 'x', number: 3, counter: 5, seen: 'roots', passed: true, note: '' } as const;

const spotB = (spot: Spot) => (s: Site) => setSpot(s, { ref: ref('fence', 'b'), spot });
const vertexB = (facts: { bendRadius?: number; drop?: number }) => (s: Site) =>
  changePathVertex(s, { id: 'main', at: 'b', facts });
const stretched = (facts: object) => (s: Site) =>
  setStretch(s, { id: 'main', stretch: { ...stretch, ...facts } });
const zeroed = (facts: object) => (s: Site) =>
  changeRun(s, {
    id: 'run',
    facts: { zero: { at: 'rim', counter: 0, riser: 1, sweepRadius: 0.2, ...facts } },
  });

type Row = readonly [
  what: string,
  most: number,
  change: (value: number) => (s: Site) => Site,
  path: readonly (string | number)[],
];

/** Each with the greatest value that the file takes, as the README of this package lists them. */
const greatest: readonly Row[] = [
  [
    'bend radius of a fitting',
    10,
    (v) => vertexB({ bendRadius: v }),
    ['paths', 0, 'vertices', 1, 'bendRadius'],
  ],
  ['drop', 50, (v) => vertexB({ drop: v }), ['paths', 0, 'vertices', 1, 'drop']],
  [
    'bend radius of a pipe',
    10,
    (v) => (s) => changePath(s, { id: 'main', facts: { bendRadius: v } }),
    ['paths', 0, 'bendRadius'],
  ],
  ['diameter', 5, (v) => stretched({ diameter: v }), ['paths', 0, 'stretches', 1, 'diameter']],
  ['slope', 2, (v) => stretched({ slope: v }), ['paths', 0, 'stretches', 1, 'slope']],
  ['entry reach', 100, (v) => (s) => changeSite(s, { entryReach: v }), ['entryReach']],
  ['tape', 1000, (v) => (s) => changeSite(s, { tape: { length: v, sigma: 0.01 } }), ['tape', 'length']],
  ['riser', 100, (v) => zeroed({ riser: v }), ['runs', 0, 'zero', 'riser']],
  ['sweep radius', 10, (v) => zeroed({ sweepRadius: v }), ['runs', 0, 'zero', 'sweepRadius']],
  ['counter at zero', 10_000, (v) => zeroed({ counter: v }), ['runs', 0, 'zero', 'counter']],
  [
    'counter',
    10_000,
    (v) => (s) => addReading(s, { run: 'run', reading: { ...reading, counter: v } }),
    ['runs', 0, 'readings', 2, 'counter'],
  ],
  [
    'leg',
    1e6,
    (v) => spotB({ by: 'course', azimuth: 0, distance: v }),
    ['features', 3, 'vertices', 1, 'spot', 'distance'],
  ],
  ['coordinate', 1e6, (v) => spotB(typed(v, 0)), ['features', 3, 'vertices', 1, 'spot', 'x']],
  [
    'dragged point',
    1e6,
    (v) => (s) => movePoint(s, { ref: ref('fence', 'b'), to: { x: 0, y: v }, places: new Map() }),
    ['features', 3, 'vertices', 1, 'spot', 'y'],
  ],
  [
    'accuracy',
    10_000,
    (v) => (s) => addControl(s, { control: { ...control, accuracy: v } }),
    ['frame', 'control', 0, 'accuracy'],
  ],
  [
    'diameter of a cleanout',
    100,
    (v) => (s) => setField(s, { id: 'head', field: 'diameter', value: v }),
    ['features', 0, 'fields', 'diameter'],
  ],
];

describe('soundEdit', () => {
  it.each(greatest)('lets %s be %d and no more, as the file does', (_, most, change, path) => {
    const kept = soundEdit(site, change(most)(site));
    if (!kept.ok) expect.fail(JSON.stringify(kept.problems));
    expect(openSite(writeSite(kept.site))).toMatchObject({ ok: true });
    for (const value of [most * 1.001, 1e8]) {
      const edited = change(value)(site);
      expect(soundEdit(site, edited)).toEqual({
        ok: false,
        problems: [{ code: 'too-great', path, limit: most, inclusive: true }],
      });
      expect(openSite(writeSite(edited)).ok).toBe(false);
    }
  });

  it('lets no length be nothing, no list overflow, no text, and no number that is none', () => {
    expect(soundEdit(site, spotB({ by: 'course', azimuth: 0, distance: 0 })(site))).toEqual({
      ok: false,
      problems: [
        {
          code: 'too-small',
          path: ['features', 3, 'vertices', 1, 'spot', 'distance'],
          limit: 0,
          inclusive: false,
        },
      ],
    });
    const pipes = Array.from({ length: 499 }, (_, i) => pipe(`p${i}`, [typed(0, 0), typed(1, i)]));
    expect(soundEdit(site, { ...site, paths: pipes })).toMatchObject({ ok: false }); // the run's pipe is gone
    const many = pipes.reduce((now, path) => addPath(now, { path }), site);
    expect(soundEdit(site, many)).toEqual({
      ok: false,
      problems: [{ code: 'too-many', path: ['paths'], limit: 500 }],
    });
    expect(soundEdit(site, changeSite(site, { name: 'n'.repeat(201) }))).toEqual({
      ok: false,
      problems: [{ code: 'too-long', path: ['name'], limit: 200 }],
    });
    expect(soundEdit(site, spotB(typed(Number.NaN, 0))(site))).toEqual({
      ok: false,
      problems: [{ code: 'wrong-value', path: ['features', 3, 'vertices', 1, 'spot', 'x'] }],
    });
  });

  it('does not look for names in a list that is too long to be looked at', () => {
    const [first, ...others] = site.features;
    if (first === undefined) throw new Error('the yard is empty');
    // as another device may have written them: no corners at all
    const vertices = new Array<never>(5001).fill({ id: 'a', spot: 'x' } as never);
    expect(soundEdit(site, { ...site, features: [{ ...first, vertices }, ...others] })).toMatchObject({
      ok: false,
      problems: [{ code: 'too-many', path: ['features', 0, 'vertices'] }],
    });
  });

  it('says where a wrong thing stands after another was taken out before it', () => {
    const edited = spotB(typed(2e6, 0))(site);
    const fewer = { ...edited, features: edited.features.filter((f) => f.id !== 'end') };
    expect(soundEdit(site, fewer)).toMatchObject({
      problems: [{ code: 'too-great', path: ['features', 2, 'vertices', 1, 'spot', 'x'] }],
    });
  });

  it('still knows names that lead to nothing and points measured from themselves', () => {
    const circle = spotB({ by: 'at', point: ref('fence', 'b') })(site);
    expect(soundEdit(site, circle)).toMatchObject({ ok: false, problems: [{ code: 'depends-on-itself' }] });
    const lost = addFeature(site, {
      feature: thing('post', 'pole', [{ by: 'at', point: ref('nowhere') }]),
    });
    expect(soundEdit(site, lost)).toMatchObject({ ok: false, problems: [{ code: 'unknown-point' }] });
  });

  it('looks at planned digs alone as well: a trench that ends before it begins would never be opened again', () => {
    const trench = { id: 'd', is: 'trench', path: 'main', name: '', note: '' } as const;
    const planned = addDig(site, { dig: { ...trench, from: 2, to: 9 } });
    expect(soundEdit(site, planned).ok).toBe(true);
    const done = soundEdit(planned, changeDig(planned, { id: 'd', facts: { from: 9, to: 2 } }));
    expect(done.ok ? [] : done.problems.map((p) => p.code)).toEqual(['dig-out-of-order']);
  });
});
