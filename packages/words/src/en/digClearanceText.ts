import type { ClearanceVerdict, EdgeClearance } from '@footmark/dig';
import type { Site } from '@footmark/site';
import { lengthText } from '../measureText';
import { atStart } from '../named';
import { sureText } from '../sureText';
import type { Said } from '../words';
import { markInText, targetInText } from './thingName';

const verdictNames: Record<Exclude<ClearanceVerdict, 'crosses'>, string> = {
  meets: 'far enough',
  misses: 'nearer than asked',
  'by-depth': 'depths decide',
  serves: 'serves it',
};

/** What a clearance is between, and how it stands to the distance that is asked. */
export function obstacleText(
  { of, feature, distance, required, verdict, toCentre }: EdgeClearance,
  site: Site,
): Said {
  const subject =
    of.is === 'outline'
      ? targetInText({ kind: 'dig', id: of.dig }, site)
      : of.is === 'path'
        ? targetInText({ kind: 'path', id: of.id }, site)
        : markInText({ kind: 'reading', run: of.run, id: of.reading }, site);
  const other = targetInText({ kind: 'feature', id: feature }, site);
  const apart =
    verdict === 'crosses'
      ? 'crosses it'
      : distance < 0
        ? `${sureText(distance, site.units)} into it`
        : `${sureText(distance, site.units)} apart${toCentre ? ', to its middle' : ''}`;
  const asked =
    required === null
      ? 'no rule asks'
      : required === 0
        ? 'to stay clear of it'
        : `${lengthText(required, site.units)} asked`;
  return {
    text: atStart(`${subject} and ${other}`),
    cure: `${atStart(apart)}; ${asked}${verdict === null || verdict === 'crosses' ? '' : `: ${verdictNames[verdict]}`}.`,
  };
}
