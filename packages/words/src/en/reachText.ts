import type { MarkReach, ReachKnown, Site } from '@footmark/site';
import { lengthText } from '../measureText';
import { targetOfPoint } from '../thing';
import { andList } from './listText';
import { sureText } from './sureText';
import { targetInText } from './thingName';

/** Where a mark can be at all by the cable alone, a sentence each. */
export function reachTexts(reach: MarkReach, site: Site): readonly string[] {
  const { knowns, region, pipes, contradiction } = reach;
  const { units } = site;
  const [own] = knowns;
  if (contradiction !== null) {
    const readings = contradiction.knowns.map((k) => `${k.mark.label} from ${pointOf(k, site)}`);
    return [
      `The cables cannot lead to one place: ${andList(readings)} are ${sureText(contradiction.gap, units)} short of it.`,
      'A reading, a zero, a point or a pair is wrong.',
    ];
  }
  return [
    ...(own === undefined
      ? []
      : [
          `At most ${lengthText(own.cable + own.slack, units)} from ${pointOf(own, site)}: there is no more cable between them.`,
        ]),
    ...(region?.kind === 'lens' && knowns.length > 1
      ? [
          `What was seen from both ends lies within ${lengthText(region.halfWidth, units)} of the straight line between the entries.`,
        ]
      : []),
    ...pipes.map(
      ({ from, to, reach: pipe }) =>
        `The pipe between ${pointOf(from, site)} and ${pointOf(to, site)} lies within ${lengthText(pipe.halfWidth, units)} to either side of the straight line.`,
    ),
  ];
}

function pointOf({ point }: ReachKnown, site: Site): string {
  return targetInText(targetOfPoint(point, site), site);
}
