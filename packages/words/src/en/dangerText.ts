import type { Danger } from '@footmark/dig';
import type { Site } from '@footmark/site';
import { type DangerCare, type DangerPlace, dangerFacts } from '../dangerFacts';
import { atStart } from '../named';
import { sureText } from './sureText';
import { targetInText } from './thingName';

const cares: Record<DangerCare, string> = {
  'dig-by-hand': 'Dig by hand.',
  'ask-before-roots': 'Ask before a root is cut.',
  'do-not-undermine': 'Do not undermine it.',
};

/** What a hole may hit, how near it is and what to do. */
export function dangerText(danger: Danger, site: Site): string {
  const { place, depth, care } = dangerFacts(danger);
  const off = sureText(danger.distance, site.units);
  const deep = depth === null ? '' : `, its top about ${sureText(depth, site.units)} deep`;
  const places: Record<DangerPlace, string> = {
    'roots-reach-in': 'its roots reach into the hole',
    'trunk-not-measured': `${off} off; nobody measured its trunk`,
    'reaches-into-footing': 'the hole reaches into it',
    'in-the-hole': `in the hole${deep}`,
    'beside-the-hole': `${off} from the hole${deep}`,
  };
  const name = atStart(targetInText({ kind: 'feature', id: danger.feature }, site));
  return [`${name}: ${places[place]}.`, ...(care === null ? [] : [cares[care]])].join(' ');
}
