import type { Danger } from '@footmark/dig';
import type { Site } from '@footmark/site';
import { atStart } from '../named';
import { sureText } from './sureText';
import { targetInText } from './thingName';

/** What a hole may hit, how near it is and what to do. */
export function dangerText(danger: Danger, site: Site): string {
  const name = atStart(targetInText({ kind: 'feature', id: danger.feature }, site));
  return `${name}: ${whereText(danger, site)}${whatText(danger)}`;
}

function whereText({ is, distance, depth }: Danger, { units }: Site): string {
  if (is === 'roots')
    return distance < 0
      ? 'its roots reach into the hole.'
      : `${sureText(distance, units)} off; nobody measured its trunk.`;
  if (is === 'footing' && distance <= 0) return 'the hole reaches into it.';
  const deep = depth === null ? '' : `, its top about ${sureText(depth, units)} deep`;
  return distance <= 0 ? `in the hole${deep}.` : `${sureText(distance, units)} from the hole${deep}.`;
}

function whatText({ is, byHand }: Danger): string {
  switch (is) {
    case 'service':
      return byHand ? ' Dig by hand.' : '';
    case 'roots':
      return ' Ask before a root is cut.';
    case 'footing':
      return ' Do not undermine it.';
  }
}
