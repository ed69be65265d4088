import type { ClearanceVerdict, EdgeClearance } from '@footmark/dig';
import type { Site, Target, Units } from '@footmark/site';
import { askedMore, type ClearanceAsked, clearanceAsked } from '../clearanceAsked';
import { lengthText } from '../measureText';
import { atStart } from '../named';
import { thingOf } from '../thing';
import { sureText } from './sureText';
import { markInText } from './thingName';

const verdictNames: Record<Exclude<ClearanceVerdict, 'crosses'>, string> = {
  meets: 'far enough',
  misses: 'nearer than asked',
  'by-depth': 'its depth and what the sewer is made of decide',
  serves: 'serves it',
};

const askedNames: Record<Exclude<ClearanceAsked['is'], 'distance'>, string> = {
  'root-zone': 'its root zone decides',
  footing: 'its footing decides',
  taken: 'the dig takes it',
  'no-rule': 'no rule asks',
  'stay-clear': 'to stay clear of it',
};

/** How far two things are apart, and how that stands to the distance that is asked. */
export function obstacleText(clearance: EdgeClearance, { units }: Pick<Site, 'units'>): string {
  const { distance, verdict, toCentre, rule } = clearance;
  const apart =
    verdict === 'crosses'
      ? 'crosses it'
      : distance < 0
        ? `${sureText(distance, units)} into it`
        : `${sureText(distance, units)} apart${toCentre ? ', to its middle' : ''}`;
  const told = verdict === null || verdict === 'crosses' ? '' : `: ${verdictText(verdict, rule)}`;
  return atStart(`${apart}; ${askedText(clearance, units)}${told}.`);
}

function verdictText(verdict: keyof typeof verdictNames, rule: EdgeClearance['rule']): string {
  // beside a main no material of the sewer's is enough
  return verdict === 'by-depth' && rule === 'waterMain' ? 'its depth decides' : verdictNames[verdict];
}

function askedText(clearance: EdgeClearance, units: Units): string {
  const asked = clearanceAsked(clearance);
  return asked.is === 'distance' ? `${lengthText(asked.metres, units)} asked` : askedNames[asked.is];
}

/** On a dimension line: how far it is to its other end, which has the room for a name, and what is asked where that is more. */
export function dimensionText(
  clearance: EdgeClearance,
  other: Target,
  said: 'full' | 'brief',
  site: Site,
): string {
  const { distance } = clearance;
  const apart = `${sureText(distance, site.units)} ${distance < 0 ? 'into' : 'to'} ${shortName(other, site)}`;
  const asked = said === 'full' ? askedMore(clearance) : null;
  return asked === null ? apart : `${apart}, ${lengthText(asked, site.units)} asked`;
}

function shortName(target: Target, site: Site): string {
  const thing = thingOf(target, site);
  return thing.is === 'dig' && thing.dig.name === '' ? `the ${thing.dig.is}` : markInText(target, site);
}
