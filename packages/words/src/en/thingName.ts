import {
  type Clearance,
  type Feature,
  kindSpec,
  type Path,
  type ReferencePoint,
  type Run,
  type Site,
  type Target,
} from '@footmark/site';
import { counterText, lengthText } from '../measureText';
import { inSentence } from '../named';
import { kindNames } from './kindNames';

/*
 * All names here are as they stand in the middle of a sentence. People's own names keep their letters; a thing without one is
 * called by its kind and id, which no other thing shares.
 */

export function featureInText(feature: Feature): string {
  return feature.name || `${inSentence(kindNames[feature.kind])} ${feature.id}`;
}

export function pathInText(path: Path): string {
  return path.name || `path ${path.id}`;
}

function runInText(run: Run): string {
  return `run ${run.letter}`;
}

/** What a finding is about. Something that is not in the site any more is called by its id. */
export function targetInText(target: Target, site: Site): string {
  switch (target.kind) {
    case 'site':
      return 'the site';
    case 'feature': {
      const feature = site.features.find((f) => f.id === target.id);
      return feature === undefined ? target.id : featurePointInText(feature, target.vertex);
    }
    case 'path': {
      const path = site.paths.find((p) => p.id === target.id);
      if (path === undefined) return target.id;
      return target.vertex === undefined
        ? pathInText(path)
        : `${pathInText(path)} point ${letterOf(target.vertex)}`;
    }
    case 'run': {
      const run = site.runs.find((r) => r.id === target.id);
      return run === undefined ? target.id : runInText(run);
    }
    case 'dig':
      return digInText(target.id, site);
    case 'set-out':
      return `set-out point ${target.number} of ${targetInText({ kind: 'path', id: target.path }, site)}`;
    case 'reading': {
      const run = site.runs.find((r) => r.id === target.run);
      const reading = run?.readings.find((r) => r.id === target.id);
      if (run === undefined || reading === undefined) return target.id;
      return `reading ${run.letter}${reading.number} (${counterText(reading.counter, site.units)})`;
    }
  }
}

/** A planned dig by its name, else by what it is and where. */
function digInText(id: string, site: Site): string {
  const dig = site.digging.digs.find((d) => d.id === id);
  if (dig === undefined) return id;
  if (dig.name !== '') return dig.name;
  if (dig.is === 'pit') {
    return `pit at ${markInText({ kind: 'reading', run: dig.at.run, id: dig.at.reading }, site)}`;
  }
  const [from, to] = [dig.from, dig.to].map((station) => lengthText(station, site.units));
  return `trench on ${targetInText({ kind: 'path', id: dig.path }, site)}, ${from} to ${to}`;
}

/** The mark that a reading leads to, `mark A7`; for any other target as `targetInText`. */
export function markInText(target: Target, site: Site): string {
  if (target.kind !== 'reading') return targetInText(target, site);
  const run = site.runs.find((r) => r.id === target.run);
  const reading = run?.readings.find((r) => r.id === target.id);
  return run === undefined || reading === undefined ? target.id : `mark ${run.letter}${reading.number}`;
}

export function referenceInText(reference: ReferencePoint, site: Site): string {
  const feature = site.features.find((f) => f.id === reference.ref.of);
  if (feature === undefined) return reference.key;
  const name = featurePointInText(feature, reference.ref.at);
  return reference.faceRadius > 0 ? `${name}, near face` : name;
}

export function clearedInText(clearance: Clearance, site: Site): string {
  const feature = site.features.find((f) => f.id === clearance.feature);
  const name = feature === undefined ? clearance.feature : featureInText(feature);
  return clearance.toCentre ? `${name} (to its centre)` : name;
}

/** A name as findings carry it: a thing's name or id, then the letter of its point where it has several. */
export function spokenName(carried: string, site: Site): string {
  const [, id = carried, point = ''] = /^(\S+)( \S+)?$/.exec(carried) ?? [];
  const feature = site.features.find((f) => f.id === id && f.name === '');
  if (feature !== undefined) return featureInText(feature) + point;
  const path = site.paths.find((p) => p.id === id && p.name === '');
  return path === undefined ? carried : pathInText(path) + point;
}

/** A point by the key `of/at` that findings carry. */
export function pointOfKey(key: string, site: Site): string {
  const [of = '', at = ''] = key.split('/');
  const kind = site.paths.some((p) => p.id === of) ? 'path' : 'feature';
  return targetInText({ kind, id: of, vertex: at }, site);
}

function featurePointInText(feature: Feature, vertex: string | undefined): string {
  const name = featureInText(feature);
  if (vertex === undefined || feature.vertices.length < 2) return name;
  return `${name} ${kindSpec(feature.kind).shape === 'area' ? 'corner' : 'point'} ${letterOf(vertex)}`;
}

function letterOf(vertex: string): string {
  return vertex.toUpperCase();
}
