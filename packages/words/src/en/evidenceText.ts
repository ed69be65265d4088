import type { BlunderGroup, FitObservation, ObservationTag, Site, Units } from '@footmark/site';
import { type BlunderWay, blunderOf } from '../blunder';
import { angleText } from '../measureText';
import { inSentence } from '../named';
import { percentText } from '../percentText';
import { knownLengthOf, markLabel, readingOf, readingOfLocate, tellingMethod } from '../sightings';
import { targetOfPoint } from '../thing';
import { choiceNames } from './fieldNames';
import { sureText } from './sureText';
import { featureInText, targetInText } from './thingName';

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
      const known = knownLengthOf(tag, site);
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

const WAYS: Record<BlunderWay, string> = {
  upstream: 'upstream',
  downstream: 'downstream',
  left: 'to the left, looking with the flow',
  right: 'to the right, looking with the flow',
  'plan-left': 'to the left on the plan',
  'plan-right': 'to the right on the plan',
  'plan-down': 'down on the plan',
  'plan-up': 'up on the plan',
  'line-back': 'back along its line',
  'line-on': 'on along its line',
  'line-left': 'to the left of its line',
  'line-right': 'to the right of its line',
};

/** What the only wrong one would have to be, in a sentence. */
export function blunderText(suspect: BlunderGroup[number], site: Site): string {
  const found = blunderOf(suspect, site);
  const by = 'by' in found ? sureText(found.by, site.units) : '';
  switch (found.is) {
    case 'elsewhere':
      return `It would have to be ${by} further ${WAYS[found.way]}.`;
    case 'two-things':
      return `They would have to be two things, ${by} apart.`;
    case 'off':
      return `It is off by ${by}.`;
    case 'seen':
      return `It would have to be ${by} ${found.short ? 'short of' : 'past'} ${seenInText(found.reading, site)}.`;
    case 'counter':
      return `It says ${found.said} and would have to say ${found.wouldBe}.`;
    case 'zero':
      return `The counter is said to have shown ${found.said} there; it would have to be ${found.wouldBe}.`;
    case 'given':
      return `It is given as ${found.said} and would have to be ${found.wouldBe}.`;
    case 'scale':
      return `It is taken as × ${found.said} and would have to be × ${found.wouldBe}.`;
    case 'turn':
      return `It turns by ${found.said} and would have to turn by ${found.wouldBe}.`;
    case 'riser':
      return `There would have to be ${by} ${found.more ? 'more' : 'less'} cable in it.`;
    case 'stray':
      return `The pipe would have to stray by ${by} more ${WAYS[found.way]}.`;
    case 'unexplained':
      return 'Nothing that it could be would explain it alone.';
  }
}

function locateInText(id: string, site: Site): string {
  const feature = site.features.find((f) => f.id === id);
  if (feature === undefined) return id;
  const reading = readingOfLocate(feature);
  if (reading === null) return featureInText(feature);
  const name = `${feature.name || 'the locate'} at ${markLabel(reading, site)}`;
  const method = tellingMethod(feature, site);
  return method === undefined ? name : `${name} (${inSentence(choiceNames[method])})`;
}

function seenInText(reading: string, site: Site): string {
  const seenAt = readingOf(reading, site)?.reading.seenAt;
  return seenAt === undefined ? 'the point that it saw' : targetInText(targetOfPoint(seenAt, site), site);
}

function pointInText(
  { path, vertex }: { readonly path: string; readonly vertex: string },
  site: Site,
): string {
  return targetInText(targetOfPoint({ of: path, at: vertex }, site), site);
}

export function runInText(id: string, site: Site): string {
  return targetInText({ kind: 'run', id }, site);
}
