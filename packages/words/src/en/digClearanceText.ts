import type { ClearanceVerdict, EdgeClearance } from '@footmark/dig';
import type { Site, Target, Units } from '@footmark/site';
import { lengthText } from '../measureText';
import { atStart } from '../named';
import { sureText } from './sureText';
import { markInText } from './thingName';

const verdictNames: Record<Exclude<ClearanceVerdict, 'crosses'>, string> = {
  meets: 'far enough',
  misses: 'nearer than asked',
  'by-depth': 'its depth and what the sewer is made of decide',
  serves: 'serves it',
};

/** What bears on the ground beside a dig. */
const BEARING: ReadonlySet<EdgeClearance['kind']> = new Set(['building', 'shed', 'porch', 'deck']);

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

/** Without a rule of distance something else may be asked, which a finding says. */
function askedText({ of, kind, distance, required }: EdgeClearance, units: Units): string {
  if (kind === 'tree' && required === null) return 'its root zone decides';
  if (of.is === 'outline' && required === null) {
    if (BEARING.has(kind)) return 'its footing decides';
    if (distance < 0) return 'the dig takes it';
  }
  if (required === null) return 'no rule asks';
  return required === 0 ? 'to stay clear of it' : `${lengthText(required, units)} asked`;
}

/** On a dimension line: how far it is to its other end, which has the room for a name, and what is asked where that is more. */
export function dimensionText(
  { distance, required, verdict }: EdgeClearance,
  other: Target,
  said: 'full' | 'brief',
  site: Site,
): string {
  const apart = `${sureText(distance, site.units)} ${distance < 0 ? 'into' : 'to'} ${shortName(other, site)}`;
  const asked = said === 'full' && verdict === 'misses' && required !== null && required > 0;
  return asked ? `${apart}, ${lengthText(required, site.units)} asked` : apart;
}

function shortName(target: Target, site: Site): string {
  const dig = target.kind === 'dig' ? site.digging.digs.find((d) => d.id === target.id) : undefined;
  if (dig === undefined) return markInText(target, site);
  return dig.name === '' ? `the ${dig.is}` : dig.name;
}
