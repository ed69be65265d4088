import type { MarkReach, ReachKnown, Site } from '@footmark/site';
import { lengthText } from '../measureText';
import { targetOfPoint } from '../thing';
import { of } from './article';
import { andList } from './listText';
import { sureText } from './sureText';
import { targetInText } from './thingName';

/** Where a mark can be at all by the cable alone, a sentence each. */
export function reachTexts(reach: MarkReach, site: Site): readonly string[] {
  const { knowns, region, pipes, contradiction } = reach;
  const { units } = site;
  const [own] = knowns;
  if (contradiction !== null) {
    const readings = contradiction.knowns.map((k) => `${k.mark.label} desde ${pointOf(k, site)}`);
    return [
      `Los cables no pueden llegar a un mismo lugar: a ${andList(readings)} les falta ${sureText(contradiction.gap, units)}.`,
      'Una lectura, un cero, un punto o una pareja está mal.',
    ];
  }
  return [
    ...(own === undefined
      ? []
      : [
          `A lo más a ${lengthText(own.cable + own.slack, units)} ${of(pointOf(own, site))}: no hay más cable entre los dos.`,
        ]),
    ...(region?.kind === 'lens' && knowns.length > 1
      ? [
          `Lo que se vio desde ambos extremos está a no más de ${lengthText(region.halfWidth, units)} de la línea recta entre las entradas.`,
        ]
      : []),
    ...pipes.map(
      ({ from, to, reach: pipe }) =>
        `La tubería entre ${pointOf(from, site)} y ${pointOf(to, site)} está a no más de ${lengthText(pipe.halfWidth, units)} a cada lado de la línea recta.`,
    ),
  ];
}

function pointOf({ point }: ReachKnown, site: Site): string {
  return targetInText(targetOfPoint(point, site), site);
}
