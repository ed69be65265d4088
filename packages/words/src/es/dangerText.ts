import type { Danger } from '@footmark/dig';
import type { Site } from '@footmark/site';
import { type DangerCare, type DangerPlace, dangerFacts } from '../dangerFacts';
import { sureText } from './sureText';
import { targetTitle } from './thingName';

const cares: Record<DangerCare, string> = {
  'dig-by-hand': 'Excave a mano.',
  'ask-before-roots': 'Pregunte antes de cortar una raíz.',
  'do-not-undermine': 'No excave por debajo.',
};

/** What a hole may hit, how near it is and what to do. */
export function dangerText(danger: Danger, site: Site): string {
  const { place, depth, care } = dangerFacts(danger);
  const off = sureText(danger.distance, site.units);
  const deep =
    depth === null ? '' : `, su parte superior a unos ${sureText(depth, site.units)} de profundidad`;
  const places: Record<DangerPlace, string> = {
    'roots-reach-in': 'sus raíces llegan al hoyo',
    'trunk-not-measured': `a ${off}; nadie midió su tronco`,
    'reaches-into-footing': 'el hoyo entra en su cimentación',
    'in-the-hole': `en el hoyo${deep}`,
    'beside-the-hole': `a ${off} del hoyo${deep}`,
  };
  const name = targetTitle({ kind: 'feature', id: danger.feature }, site);
  return [`${name}: ${places[place]}.`, ...(care === null ? [] : [cares[care]])].join(' ');
}
