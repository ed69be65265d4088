import type { ClearanceVerdict, EdgeClearance } from '@footmark/dig';
import type { Site, Target, Units } from '@footmark/site';
import { askedMore, type ClearanceAsked, clearanceAsked } from '../clearanceAsked';
import { lengthText } from '../measureText';
import { atStart } from '../named';
import { thingOf } from '../thing';
import { of, to } from './article';
import { sureText } from './sureText';
import { markInText } from './thingName';

const verdictNames: Record<Exclude<ClearanceVerdict, 'crosses'>, string> = {
  meets: 'suficiente',
  misses: 'más cerca de lo exigido',
  'by-depth': 'deciden su profundidad y el material de la alcantarilla',
  serves: 'le da servicio',
};

const askedNames: Record<Exclude<ClearanceAsked['is'], 'distance'>, string> = {
  'root-zone': 'decide su zona de raíces',
  footing: 'decide su zapata',
  taken: 'la excavación se lo lleva',
  'no-rule': 'ninguna regla exige nada',
  'stay-clear': 'no tocarlo',
};

/** How far two things are apart, and how that stands to the distance that is asked. */
export function obstacleText(clearance: EdgeClearance, { units }: Pick<Site, 'units'>): string {
  const { distance, verdict, toCentre, rule } = clearance;
  const apart =
    verdict === 'crosses'
      ? 'se cruzan'
      : distance < 0
        ? `${sureText(distance, units)} hacia adentro`
        : `a ${sureText(distance, units)}${toCentre ? ' de su centro' : ''}`;
  const told = verdict === null || verdict === 'crosses' ? '' : `: ${verdictText(verdict, rule)}`;
  return atStart(`${apart}; ${askedText(clearance, units)}${told}.`);
}

function verdictText(verdict: keyof typeof verdictNames, rule: EdgeClearance['rule']): string {
  // beside a main no material of the sewer's is enough
  return verdict === 'by-depth' && rule === 'waterMain' ? 'decide su profundidad' : verdictNames[verdict];
}

function askedText(clearance: EdgeClearance, units: Units): string {
  const asked = clearanceAsked(clearance);
  return asked.is === 'distance' ? `exigido ${lengthText(asked.metres, units)}` : askedNames[asked.is];
}

/** On a dimension line: how far it is to its other end, which has the room for a name, and what is asked where that is more. */
export function dimensionText(
  clearance: EdgeClearance,
  other: Target,
  said: 'full' | 'brief',
  site: Site,
): string {
  const { distance } = clearance;
  const name = shortName(other, site);
  const apart = `${sureText(distance, site.units)} ${distance < 0 ? `dentro ${of(name)}` : to(name)}`;
  const asked = said === 'full' ? askedMore(clearance) : null;
  return asked === null ? apart : `${apart}, exigido ${lengthText(asked, site.units)}`;
}

function shortName(target: Target, site: Site): string {
  const thing = thingOf(target, site);
  if (thing.is !== 'dig' || thing.dig.name !== '') return markInText(target, site);
  return thing.dig.is === 'pit' ? 'el foso' : 'la zanja';
}
