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
import { atStart, inSentence } from '../named';
import { carriedThing, pointOf, type Thing, thingOf } from '../thing';
import { type Named, of, withArticle } from './article';
import { kinds } from './kindNames';

/*
 * A thing by the name that people gave it, which keeps its letters and takes no article; without one by its kind and id, which no
 * other thing shares, with the article of its kind inside a sentence and without it as a label.
 */

export function featureInText(feature: Feature): string {
  return withArticle(featureNamed(feature));
}

/** What a finding is about, inside a sentence. Something that is not in the site any more is called by its id. */
export function targetInText(target: Target, site: Site): string {
  return withArticle(targetNamed(target, site));
}

/** The same as a label. */
export function targetTitle(target: Target, site: Site): string {
  return atStart(targetNamed(target, site).name);
}

/** The mark that a reading leads to, `la marca A7`; for any other target as `targetInText`. */
export function markInText(target: Target, site: Site): string {
  return withArticle(markNamed(target, site));
}

export function markTitle(target: Target, site: Site): string {
  return atStart(markNamed(target, site).name);
}

export function referenceInText(reference: ReferencePoint, site: Site): string {
  return withArticle(referenceNamed(reference, site));
}

export function referenceTitle(reference: ReferencePoint, site: Site): string {
  return atStart(referenceNamed(reference, site).name);
}

export function clearedTitle(clearance: Clearance, site: Site): string {
  const name = targetTitle({ kind: 'feature', id: clearance.feature }, site);
  return clearance.toCentre ? `${name} (a su centro)` : name;
}

/** A name as findings carry it. */
export function spokenName(carried: string, site: Site): string {
  const found = carriedThing(carried, site);
  if (found === null) return carried;
  const named = isPath(found.thing) ? pathNamed(found.thing) : featureNamed(found.thing);
  return `${withArticle(named)}${found.point}`;
}

function featureNamed(feature: Feature): Named {
  if (feature.name !== '') return { name: feature.name, gender: null };
  const { name, gender } = kinds[feature.kind];
  return { name: `${inSentence(name)} ${feature.id}`, gender };
}

function pathNamed(path: Path): Named {
  return path.name === '' ? { name: `tubería ${path.id}`, gender: 'f' } : { name: path.name, gender: null };
}

function targetNamed(target: Target, site: Site): Named {
  const thing = thingOf(target, site);
  switch (thing.is) {
    case 'site':
      return { name: 'sitio', gender: 'm' };
    case 'gone':
      return { name: thing.id, gender: null };
    case 'feature':
      return withPoint(thing);
    case 'path': {
      const named = pathNamed(thing.path);
      if (thing.letter === null) return named;
      return { name: `punto ${thing.letter} ${of(withArticle(named))}`, gender: 'm' };
    }
    case 'run':
      return { name: `recorrido ${thing.run.letter}`, gender: 'm' };
    case 'dig':
      return digNamed(thing.dig, site);
    case 'set-out': {
      const path = targetInText({ kind: 'path', id: thing.path }, site);
      return { name: `punto de replanteo ${thing.number} ${of(path)}`, gender: 'm' };
    }
    case 'reading': {
      const label = `${thing.run.letter}${thing.reading.number}`;
      return { name: `lectura ${label} (${counterText(thing.reading.counter, site.units)})`, gender: 'f' };
    }
  }
}

/** A planned dig by its name, else by what it is and where. */
function digNamed(dig: Dig, site: Site): Named {
  if (dig.name !== '') return { name: dig.name, gender: null };
  if (dig.is === 'pit') {
    const mark = markInText({ kind: 'reading', run: dig.at.run, id: dig.at.reading }, site);
    return { name: `foso en ${mark}`, gender: 'm' };
  }
  const [from, to] = [dig.from, dig.to].map((station) => lengthText(station, site.units));
  const path = targetInText({ kind: 'path', id: dig.path }, site);
  return { name: `zanja en ${path} de ${from} a ${to}`, gender: 'f' };
}

function markNamed(target: Target, site: Site): Named {
  const thing = thingOf(target, site);
  return thing.is === 'reading'
    ? { name: `marca ${thing.run.letter}${thing.reading.number}`, gender: 'f' }
    : targetNamed(target, site);
}

function referenceNamed(reference: ReferencePoint, site: Site): Named {
  const feature = site.features.find((f) => f.id === reference.ref.of);
  if (feature === undefined) return { name: reference.key, gender: null };
  const { name, gender } = withPoint({ feature, point: pointOf(feature, reference.ref.at) });
  return { name: reference.faceRadius > 0 ? `${name} (cara cercana)` : name, gender };
}

function withPoint({ feature, point }: Pick<Extract<Thing, { is: 'feature' }>, 'feature' | 'point'>): Named {
  const named = featureNamed(feature);
  if (point === null) return named;
  const whole = `${point.letter} ${of(withArticle(named))}`;
  return point.of === 'corner'
    ? { name: `esquina ${whole}`, gender: 'f' }
    : { name: `punto ${whole}`, gender: 'm' };
}
