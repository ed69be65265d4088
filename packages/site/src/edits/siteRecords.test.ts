import { distance } from '@footmark/geometry';
import { describe, expect, it } from 'vitest';
import { derive } from '../derive/derive';
import type { Feature } from '../document/feature';
import type { ControlPoint, North } from '../document/frame';
import { integrityProblems } from '../document/integrity';
import { openSiteValue } from '../document/openSite';
import type { Site } from '../document/site';
import type { LegSpot } from '../document/spot';
import type { Underlay } from '../document/underlay';
import { DEGREE, ref, square, thing, typed, yard } from '../testing/yard';
import { setBalance, setClosing } from './featureEdits';
import { addControl, changeControl, removeControl, setNorth } from './frameEdits';
import { removeThing } from './removeThing';
import { soundEdit } from './soundEdit';
import { rotateThings } from './thingEdits';
import { addUnderlay, changeUnderlay, removeUnderlay } from './underlayEdits';
import { insertVertex, moveThings, removeVertex, setSpot } from './vertexEdits';

const course = (azimuth: number, length: number): LegSpot => ({
  by: 'course',
  azimuth: azimuth * DEGREE,
  distance: length,
});

const lot = thing('lot', 'boundary', [typed(0, 0), course(90, 20), course(0, 20.2), course(270, 20)]);
const posts = [thing('A', 'pole', [typed(3, 4)]), thing('B', 'pole', [typed(13, 4)])];
const site = yard({ features: [lot, ...posts] });
const placesOf = (of: Site) => derive(of).points;
const featureOf = (of: Site, id: string): Feature | undefined => of.features.find((f) => f.id === id);

const picture: Underlay = {
  id: 'u1',
  name: 'Plat',
  file: 'f1',
  widthPx: 100,
  heightPx: 100,
  fit: {
    by: 'pairs',
    pairs: [
      { pixel: { x: 0, y: 0 }, to: { is: 'point', point: ref('A') } },
      { pixel: { x: 90, y: 0 }, to: { is: 'point', point: ref('B') } },
    ],
  },
  opacity: 0.5,
  shown: true,
  locked: false,
};

const control: ControlPoint = {
  id: 'c1',
  point: ref('A'),
  latitudeDeg: 10,
  longitudeDeg: -30,
  accuracy: 0.5,
  source: 'typed',
};

describe('pictures under the plan', () => {
  it('are added, changed and taken away', () => {
    const added = addUnderlay(site, { underlay: picture });
    expect(openSiteValue(added).ok).toBe(true);
    const dim = changeUnderlay(added, { id: 'u1', facts: { opacity: 0.2, locked: true, name: 'Old plat' } });
    expect(dim.underlays).toEqual([{ ...picture, opacity: 0.2, locked: true, name: 'Old plat' }]);
    expect(removeUnderlay(dim, { id: 'u1' })).toEqual(site);
    expect(() => removeUnderlay(site, { id: 'u1' })).toThrow('u1');
    expect(() => changeUnderlay(site, { id: 'u1', facts: {} })).toThrow('u1');
  });

  it('stay where they are when a point that they are fitted to goes', () => {
    const added = addUnderlay(site, { underlay: picture });
    const before = derive(added).underlays.get('u1');
    const after = removeThing(added, { id: 'B', places: placesOf(added) });
    expect(integrityProblems(after)).toEqual([]);
    expect(derive(after).underlays.get('u1')).toEqual(before);
  });
});

describe('the frame', () => {
  it('takes a north and control points', () => {
    const north: North = { by: 'typed', azimuth: 1 };
    const placed = addControl(setNorth(site, { north }), { control });
    expect(openSiteValue(placed).ok).toBe(true);
    const surer = changeControl(placed, { id: 'c1', facts: { accuracy: 0.1 } });
    expect(surer.frame).toEqual({ north, control: [{ ...control, accuracy: 0.1 }] });
    expect(removeControl(surer, { id: 'c1' }).frame).toEqual({ north, control: [] });
    expect(() => removeControl(site, { id: 'c1' })).toThrow('c1');
  });

  it.each<North>([
    { by: 'line', from: ref('A'), to: ref('B'), azimuth: 80 * DEGREE },
    { by: 'compass', from: ref('B'), to: ref('A'), reading: 200 * DEGREE, declination: -9 * DEGREE },
  ])('keeps north when the line that told it by %o goes, and drops control on it', (north) => {
    const placed = addControl(setNorth(site, { north }), { control });
    const after = removeThing(placed, { id: 'A', places: placesOf(placed) });
    expect(integrityProblems(after)).toEqual([]);
    expect(after.frame.control).toEqual([]);
    expect(derive(after).frame.northAzimuth).toBeCloseTo(derive(placed).frame.northAzimuth, 12);
  });
});

describe('closing courses', () => {
  it('are set and taken off, and the balance with them', () => {
    const closed = setClosing(site, { id: 'lot', closing: course(180, 20) });
    const balanced = setBalance(closed, { id: 'lot', balance: 'compass' });
    expect(openSiteValue(balanced).ok).toBe(true);
    expect(derive(balanced).features.get('lot')?.closure?.balanced).toBe(true);
    expect(setBalance(balanced, { id: 'lot', balance: undefined })).toEqual(closed);
    expect(setClosing(balanced, { id: 'lot', closing: undefined })).toEqual(site);
    expect(featureOf(setClosing(balanced, { id: 'lot', closing: course(180, 21) }), 'lot')?.balance).toBe(
      'compass',
    );
  });

  it('go when the side that they measured does', () => {
    const closed = setClosing(site, { id: 'lot', closing: course(180, 20) });
    const places = placesOf(closed);
    const vertex = { id: 'e', spot: typed(-5, 10) };
    const behind = insertVertex(closed, { ref: ref('lot', 'd'), vertex, places });
    expect(featureOf(behind, 'lot')).not.toHaveProperty('closing');
    const within = insertVertex(closed, { ref: ref('lot', 'b'), vertex, places });
    expect(featureOf(within, 'lot')).toHaveProperty('closing');
    expect(featureOf(removeVertex(closed, { ref: ref('lot', 'd'), places }), 'lot')).not.toHaveProperty(
      'closing',
    );
  });

  it('turn with their outline', () => {
    const closed = setBalance(setClosing(site, { id: 'lot', closing: course(180, 20) }), {
      id: 'lot',
      balance: 'compass',
    });
    const about = { x: 7, y: -3 };
    const turned = rotateThings(closed, {
      ids: ['lot'],
      about,
      angle: 70 * DEGREE,
      places: placesOf(closed),
    });
    const [was, is] = [derive(closed).features.get('lot'), derive(turned).features.get('lot')];
    for (const [i, p] of (was?.points ?? []).entries()) {
      expect(distance(is?.points[i] ?? about, about)).toBeCloseTo(distance(p, about), 9);
    }
    expect(is?.closure?.length).toBeCloseTo(was?.closure?.length ?? -1, 9);
  });
});

describe('moveThings', () => {
  it('moves each', () => {
    const moved = moveThings(site, { ids: ['A', 'B'], by: { x: 1, y: -2 } });
    const { points } = derive(moved);
    expect(points.get('A/a')?.at).toEqual({ x: 4, y: 2 });
    expect(points.get('B/a')?.at).toEqual({ x: 14, y: 2 });
    expect(points.get('lot/a')?.at).toEqual({ x: 0, y: 0 });
  });

  it('moves nothing of what is held by measurements', () => {
    const taped = setSpot(site, {
      ref: ref('B'),
      spot: { by: 'bearing', from: ref('A'), azimuth: 1, distance: 5 },
    });
    expect(moveThings(taped, { ids: ['B'], by: { x: 1, y: -2 } })).toEqual(taped);
  });
});

describe('soundEdit', () => {
  it('gives back what is sound and what did not touch anything', () => {
    const edited = setNorth(site, { north: { by: 'typed', azimuth: 1 } });
    expect(soundEdit(site, edited)).toEqual({ ok: true, site: edited });
    const unsound = { ...site, features: [...site.features, square('lot', 'shed', 0, 0, 2)] };
    expect(soundEdit(unsound, { ...unsound, name: 'Other' }).ok).toBe(true);
  });

  it('gives the site itself where nothing is another', () => {
    const again = setNorth(setNorth(site, { north: { by: 'typed', azimuth: 1 } }), {
      north: site.frame.north,
    });
    expect(again).not.toBe(site);
    expect(soundEdit(site, again)).toEqual({ ok: true, site });
    expect(Reflect.get(soundEdit(site, again), 'site')).toBe(site);
  });

  it('names what an edit would break', () => {
    const to = ref('A');
    const looped = setSpot(setSpot(site, { ref: ref('B'), spot: { by: 'at', point: to } }), {
      ref: to,
      spot: { by: 'at', point: ref('B') },
    });
    expect(soundEdit(site, looped)).toMatchObject({ ok: false, problems: [{ code: 'depends-on-itself' }] });
    const lost = setNorth(site, { north: { by: 'line', from: ref('A'), to: ref('Z'), azimuth: 1 } });
    expect(soundEdit(site, lost)).toMatchObject({
      ok: false,
      problems: [{ code: 'unknown-point', path: ['frame', 'north', 'to'] }],
    });
  });
});
