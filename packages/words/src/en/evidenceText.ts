import {
  type BlunderGroup,
  type Feature,
  type FitObservation,
  factorOf,
  formatLength,
  type ObservationTag,
  type Site,
  type Units,
} from '@footmark/site';
import { angleText, counterText, directionText, lengthText } from '../measureText';
import { inSentence } from '../named';
import { percentText } from '../percentText';
import { choiceNames } from './fieldNames';
import { sureText } from './sureText';
import { featureInText, targetInText } from './thingName';

/** Scales are told to a few parts in ten thousand. */
const SCALE_DECIMALS = 4;

/** What an observation of the fit is, as it stands in the middle of a sentence. */
export function evidenceInText(tag: ObservationTag, site: Site): string {
  switch (tag.is) {
    case 'locate':
      return locateInText(tag.feature, site);
    case 'pair': {
      const pair = site.pairs.find((p) => p.id === tag.pair);
      if (pair === undefined) return tag.pair;
      return `${markLabel(pair.a.reading, site)} and ${markLabel(pair.b.reading, site)} as one thing`;
    }
    case 'seen':
      return `${markLabel(tag.reading, site)} at ${seenInText(tag.reading, site)}`;
    case 'counter':
      return `the counter at ${markLabel(tag.reading, site)}`;
    case 'length': {
      const path = site.paths.find((p) => p.id === tag.path);
      const known = path?.knownLengths?.find((k) => k.id === tag.length);
      const name = targetInText({ kind: 'path', id: tag.path }, site);
      return known === undefined
        ? `the known length of ${name}`
        : `the known length of ${name} from ${known.from.toUpperCase()} to ${known.to.toUpperCase()}`;
    }
    case 'bend':
      return `the fitting at ${pointInText(tag, site)}`;
    case 'scale':
      return `the scale of the counter of ${runInText(tag.run, site)}`;
    case 'zero':
      return `the zero of ${runInText(tag.run, site)}`;
    case 'riser':
      return `the riser of ${runInText(tag.run, site)}`;
    case 'point':
      return `the place of ${pointInText(tag, site)}`;
    case 'leg':
      return `the ${tag.part} of the leg to ${pointInText(tag, site)}`;
    case 'stray':
      return `how straight the leg to ${pointInText(tag, site)} is`;
  }
}

function legOffText({ tag, residual }: FitObservation, units: Units): string {
  const off = Math.abs(residual);
  return tag.is === 'leg' && tag.part !== 'length' ? `${angleText(off)} off` : `${sureText(off, units)} off`;
}

/** How far off an observation came out. `parts`: all of one name. */
export function offText(parts: readonly FitObservation[], { units }: Site): string {
  const [first] = parts;
  if (first === undefined) return '';
  const { tag } = first;
  const off = Math.hypot(...parts.map((p) => p.residual));
  switch (tag.is) {
    case 'bend':
      return `${angleText(off)} off`;
    case 'scale':
      return `${percentText(off)} off`;
    case 'leg':
      return parts.map((p) => legOffText(p, units)).join(' and ');
    case 'pair':
      return `${sureText(off, units)} apart`;
    default:
      return `${sureText(off, units)} off`;
  }
}

/** What the only wrong one would have to be, in a sentence. */
export function blunderText(suspect: BlunderGroup[number], site: Site): string {
  const { tag, blunder, observed } = suspect;
  const { units } = site;
  const by = sureText(blunder, units);
  switch (tag.is) {
    case 'locate': {
      const way =
        tag.part === 'along'
          ? blunder > 0
            ? 'upstream'
            : 'downstream'
          : `to the ${blunder > 0 ? 'left' : 'right'}, looking with the flow`;
      return `It would have to be ${by} further ${way}.`;
    }
    case 'pair':
      return `They would have to be two things, ${by} apart.`;
    case 'seen':
      return `It would have to be ${by} ${blunder > 0 ? 'short of' : 'past'} ${seenInText(tag.reading, site)}.`;
    case 'counter': {
      const said = readingOf(tag.reading, site)?.reading.counter;
      if (said === undefined) return `It is off by ${by}.`;
      return `It says ${counterText(said, units)} and would have to say ${countText(said - blunder, units)}.`;
    }
    case 'length': {
      const known = site.paths
        .find((p) => p.id === tag.path)
        ?.knownLengths?.find((k) => k.id === tag.length)?.length;
      return known === undefined ? `It is off by ${by}.` : lengthBlunderText(known, blunder, site);
    }
    case 'bend':
      return turnBlunderText(observed, blunder);
    case 'scale': {
      const run = site.runs.find((r) => r.id === tag.run);
      const said = run === undefined ? observed : factorOf(run.scale);
      return said - blunder > 0
        ? `It is taken as × ${scaleText(said)} and would have to be × ${scaleText(said - blunder)}.`
        : NOTHING_EXPLAINS;
    }
    case 'zero': {
      const said = site.runs.find((r) => r.id === tag.run)?.zero.counter ?? observed;
      return `The counter is said to have shown ${counterText(said, units)} there; it would have to be ${countText(said - blunder, units)}.`;
    }
    case 'riser':
      return `There would have to be ${by} ${blunder > 0 ? 'less' : 'more'} cable in it.`;
    case 'point':
      return `It would have to be ${by} further ${POINT_WAYS[tag.axis][blunder > 0 ? 0 : 1]}.`;
    case 'leg':
      if (tag.part === 'length') return lengthBlunderText(observed, blunder, site);
      return tag.part === 'turn'
        ? turnBlunderText(observed, blunder)
        : `It is given as ${directionText(observed, units)} and would have to be ${directionText(observed - blunder, units)}.`;
    case 'stray':
      return `The pipe would have to stray by ${by} more to the ${blunder > 0 ? 'left' : 'right'}, looking with the flow.`;
  }
}

/** Of a length or a scale that would have to be nothing or less. */
const NOTHING_EXPLAINS = 'Nothing that it could be would explain it alone.';

/** `observed`: the angle from the leg before, turned about, to this one. */
function turnBlunderText(observed: number, blunder: number): string {
  const turn = (angle: number) => angleText(angle - Math.PI);
  return `It turns by ${turn(observed)} and would have to turn by ${turn(observed - blunder)}.`;
}

function lengthBlunderText(said: number, blunder: number, { units }: Site): string {
  return said - blunder > 0
    ? `It is given as ${lengthText(said, units)} and would have to be ${lengthText(said - blunder, units)}.`
    : NOTHING_EXPLAINS;
}

/** Where a point would have to be that is said to be too far that way, or the other way. */
const POINT_WAYS = {
  x: ['to the left on the plan', 'to the right on the plan'],
  y: ['down on the plan', 'up on the plan'],
  along: ['back along its line', 'on along its line'],
  across: ['to the left of its line', 'to the right of its line'],
} as const;

function locateInText(id: string, site: Site): string {
  const feature = site.features.find((f) => f.id === id);
  if (feature === undefined) return id;
  const reading = readingOfLocate(feature);
  if (reading === null) return featureInText(feature);
  const name = `${feature.name || 'the locate'} at ${markLabel(reading, site)}`;
  const others = site.features.filter((f) => f !== feature && readingOfLocate(f) === reading);
  const method = feature.kind === 'locate' ? feature.fields.method : undefined;
  return others.length === 0 || method === undefined ? name : `${name} (${inSentence(choiceNames[method])})`;
}

function readingOfLocate(feature: Feature): string | null {
  return feature.kind === 'locate' ? (feature.fields.reading?.reading ?? null) : null;
}

function readingOf(id: string, site: Site) {
  for (const run of site.runs) {
    const reading = run.readings.find((r) => r.id === id);
    if (reading !== undefined) return { run, reading };
  }
  return null;
}

/** What is painted for a reading, such as `A7`. */
function markLabel(reading: string, site: Site): string {
  const found = readingOf(reading, site);
  return found === null ? reading : `${found.run.letter}${found.reading.number}`;
}

function seenInText(reading: string, site: Site): string {
  const seenAt = readingOf(reading, site)?.reading.seenAt;
  return seenAt === undefined
    ? 'the point that it saw'
    : pointInText({ path: seenAt.of, vertex: seenAt.at }, site);
}

function pointInText(
  { path, vertex }: { readonly path: string; readonly vertex: string },
  site: Site,
): string {
  const kind = site.paths.some((p) => p.id === path) ? 'path' : 'feature';
  return targetInText({ kind, id: path, vertex }, site);
}

export function runInText(id: string, site: Site): string {
  return targetInText({ kind: 'run', id }, site);
}

/** What a counter would have to show: to its tenths of feet, or to centimetres. */
function countText(metres: number, { length }: Units): string {
  return length === 'm'
    ? formatLength(metres, 'm', { decimals: 2 })
    : formatLength(metres, 'ft', { decimals: 1 });
}

export function scaleText(scale: number): string {
  return String(Number(scale.toFixed(SCALE_DECIMALS)));
}
