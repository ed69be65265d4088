import {
  type Clearance,
  type Dig,
  type Feature,
  isPath,
  type Path,
  type ReferencePoint,
  type Site,
  type Target,
} from '@footmark/site';
import { counterText, lengthText } from '../measureText';
import { inSentence } from '../named';
import { carriedThing, pointOf, type Thing, thingOf } from '../thing';
import { kindNames } from './kindNames';

/*
 * All names here are as they stand in the middle of a sentence. People's own names keep their letters; a thing without one is
 * called by its kind and id, which no other thing shares.
 */

export function featureInText(feature: Feature): string {
  return feature.name || `${inSentence(kindNames[feature.kind])} ${feature.id}`;
}

function pathInText(path: Path): string {
  return path.name || `path ${path.id}`;
}

/** What a finding is about. Something that is not in the site any more is called by its id. */
export function targetInText(target: Target, site: Site): string {
  const thing = thingOf(target, site);
  switch (thing.is) {
    case 'site':
      return 'the site';
    case 'gone':
      return thing.id;
    case 'feature':
      return withPoint(thing);
    case 'path':
      return thing.letter === null
        ? pathInText(thing.path)
        : `${pathInText(thing.path)} point ${thing.letter}`;
    case 'run':
      return `run ${thing.run.letter}`;
    case 'dig':
      return digInText(thing.dig, site);
    case 'set-out':
      return `set-out point ${thing.number} of ${targetInText({ kind: 'path', id: thing.path }, site)}`;
    case 'reading':
      return `reading ${thing.run.letter}${thing.reading.number} (${counterText(thing.reading.counter, site.units)})`;
  }
}

/** A planned dig by its name, else by what it is and where. */
function digInText(dig: Dig, site: Site): string {
  if (dig.name !== '') return dig.name;
  if (dig.is === 'pit') {
    return `pit at ${markInText({ kind: 'reading', run: dig.at.run, id: dig.at.reading }, site)}`;
  }
  const [from, to] = [dig.from, dig.to].map((station) => lengthText(station, site.units));
  return `trench on ${targetInText({ kind: 'path', id: dig.path }, site)}, ${from} to ${to}`;
}

/** The mark that a reading leads to, `mark A7`; for any other target as `targetInText`. */
export function markInText(target: Target, site: Site): string {
  const thing = thingOf(target, site);
  return thing.is === 'reading'
    ? `mark ${thing.run.letter}${thing.reading.number}`
    : targetInText(target, site);
}

export function referenceInText(reference: ReferencePoint, site: Site): string {
  const feature = site.features.find((f) => f.id === reference.ref.of);
  if (feature === undefined) return reference.key;
  const name = withPoint({ feature, point: pointOf(feature, reference.ref.at) });
  return reference.faceRadius > 0 ? `${name}, near face` : name;
}

export function clearedInText(clearance: Clearance, site: Site): string {
  const name = targetInText({ kind: 'feature', id: clearance.feature }, site);
  return clearance.toCentre ? `${name} (to its centre)` : name;
}

/** A name as findings carry it. */
export function spokenName(carried: string, site: Site): string {
  const found = carriedThing(carried, site);
  if (found === null) return carried;
  return `${isPath(found.thing) ? pathInText(found.thing) : featureInText(found.thing)}${found.point}`;
}

function withPoint({ feature, point }: Pick<Extract<Thing, { is: 'feature' }>, 'feature' | 'point'>): string {
  return point === null ? featureInText(feature) : `${featureInText(feature)} ${point.of} ${point.letter}`;
}
