import { normalizeAzimuth, type Point, rotate } from '@footmark/geometry';
import type { AsFound, GivenPaint } from '../document/asFound';
import type { PathVertex } from '../document/path';
import { pointOwners, refKey } from '../document/pointOwners';
import type { Reading, Run } from '../document/run';
import type { Site } from '../document/site';
import { type LegSpot, type Ref, refsOfSpot, type Spot } from '../document/spot';
import { type Edit, unknown } from './edit';
import { type Places, placesWithin } from './holdPlaces';
import { moveThing, withVertices } from './vertexEdits';

/** Keeps a feature or a path from being moved or changed by a slip of the hand, or lets go of it. */
export const setLocked: Edit<{ id: string; locked: boolean }> = (site, { id, locked }) => {
  if (!pointOwners(site).some((o) => o.id === id)) return unknown('thing', id);
  const change = <Thing extends { id: string; locked?: true | undefined }>(thing: Thing): Thing => {
    if (thing.id !== id) return thing;
    const { locked: _, ...rest } = thing;
    return (locked ? { ...rest, locked: true } : rest) as Thing; // the same thing but for its optional lock
  };
  return { ...site, features: site.features.map(change), paths: site.paths.map(change) };
};

/**
 * Turns features and paths together about a point by an angle (rad, right positive). What is measured among them keeps its measurement;
 * a point of theirs that was measured from anything else becomes a place by eye, as that no longer holds. What crews found by tapes from them turns along.
 * `places`: where they are now.
 */
export const rotateThings: Edit<{ ids: readonly string[]; about: Point; angle: number; places: Places }> = (
  site,
  { ids, about, angle, places },
) => {
  const chosen = new Set(ids);
  const turned = ids.reduce((now, id) => {
    const placeOf = placesWithin(id, places);
    return withVertices(now, id, (vertices) =>
      vertices.map((v): PathVertex => {
        const place = placeOf(v);
        const stays = place === undefined || refsOfSpot(v.spot).every((ref) => chosen.has(ref.of));
        const spot = stays ? v.spot : { by: 'finger' as const, x: place.x, y: place.y };
        return { ...v, spot: turnedSpot(spot, about, angle) };
      }),
    );
  }, site);
  const features = turned.features.map((f) =>
    chosen.has(f.id) && f.closing !== undefined ? { ...f, closing: turnedLeg(f.closing, angle) } : f,
  );
  const isChosen = ({ of }: Ref) => chosen.has(of);
  const finds = site.asFound.map((found) =>
    found.given?.ties.length && found.given.ties.every(({ from }) => isChosen(from))
      ? turnedFind(found, found.given, about, angle)
      : found,
  );
  const asFound = finds.every((f, i) => f === site.asFound[i]) ? site.asFound : finds;
  const swung = site.runs.map((run) =>
    run.path !== null && chosen.has(run.path) ? withTurnedPaint(run, angle) : run,
  );
  const runs = swung.every((run, i) => run === site.runs[i]) ? site.runs : swung;
  return { ...turned, features, runs, asFound };
};

/** A run after its pipe has turned: paint that stands beside a mark stands on the same side of the pipe. */
function withTurnedPaint(run: Run, angle: number): Run {
  if (run.readings.every(({ offset }) => offset === undefined)) return run;
  const readings = run.readings.map((reading): Reading => {
    const { offset } = reading;
    if (offset === undefined) return reading;
    return { ...reading, offset: { ...offset, azimuth: normalizeAzimuth(offset.azimuth + angle) } };
  });
  return { ...run, readings };
}

/** A find after all that its paint was taped from has turned: the paint follows its tapes, and the way in which it was measured off turns. */
function turnedFind(found: AsFound, given: GivenPaint, about: Point, angle: number): AsFound {
  const { where } = found;
  const isPlace = where?.by === 'finger' || where?.by === 'coordinates';
  return {
    ...found,
    given: {
      ...given,
      at: rotate(given.at, -angle, about),
      flow: normalizeAzimuth(given.flow + angle),
    },
    ...(isPlace ? { where: { ...where, ...rotate(where, -angle, about) } } : {}),
  };
}

function turnedLeg(leg: LegSpot, angle: number): LegSpot {
  switch (leg.by) {
    case 'course':
      return { ...leg, azimuth: normalizeAzimuth(leg.azimuth + angle) };
    case 'arc':
      return leg.chord === null ? leg : { ...leg, chord: normalizeAzimuth(leg.chord + angle) };
    case 'turn':
      return leg;
  }
}

/** A spot after all that it is measured from has turned with it. */
function turnedSpot(spot: Spot, about: Point, angle: number): Spot {
  switch (spot.by) {
    case 'finger':
    case 'coordinates':
      return { ...spot, ...rotate(spot, -angle, about) };
    case 'course':
    case 'arc':
    case 'turn':
      return turnedLeg(spot, angle);
    case 'bearing':
      return { ...spot, azimuth: normalizeAzimuth(spot.azimuth + angle) };
    case 'tapes':
    case 'offset':
    case 'between':
    case 'at':
      return spot;
  }
}

/** Brings the first points of several things to one x (a line north to south) or one y, their mean; each thing moves as a whole. */
export const alignThings: Edit<{ ids: readonly string[]; axis: 'x' | 'y'; places: Places }> = (
  site,
  { ids, axis, places },
) => {
  const firsts = pointOwners(site)
    .filter((o) => ids.includes(o.id))
    .flatMap((o) => {
      const at = places.get(refKey({ of: o.id, at: o.vertices[0]?.id ?? '' }))?.at;
      return at === undefined ? [] : [{ id: o.id, at }];
    });
  const mean = firsts.reduce((sum, { at }) => sum + at[axis], 0) / Math.max(1, firsts.length);
  return firsts.reduce((moved: Site, { id, at }) => {
    const by = axis === 'x' ? { x: mean - at.x, y: 0 } : { x: 0, y: mean - at.y };
    return moveThing(moved, { id, by });
  }, site);
};
