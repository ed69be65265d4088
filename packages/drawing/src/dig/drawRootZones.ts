import type { Excavation, TreeZones } from '@footmark/dig';
import { ellipseOutline, intersectionOf, pointAtAzimuth, type Region, radians } from '@footmark/geometry';
import type { Units } from '@footmark/site';
import type { DrawingWords, RootZone } from '../drawOptions';
import type { LayerBuilder } from '../layerBuilder';
import { PEN } from '../lineTypes';
import type { Fill, Stroke } from '../primitive';
import { PRIORITY, TEXT_MM } from '../textStyle';
import { fillRing } from './ringsOf';

const ZONE: Stroke = { ink: 'plant', weight: PEN.fine, dash: [3.2, 1.6] };
const INNER: Stroke = { ink: 'plant', weight: PEN.medium, dash: [1.4, 1] };
const TAKEN: Fill = { ink: 'plant', opacity: 0.85, hatch: 'diagonal' };
/** Where on the circle its name may stand, degrees, the best first; the inner circle's on the other side. */
const NAME_AZIMUTHS = [45, 135, 90, 315, 225, 270, 180, 0];
const INNER_TURN = 180;

/** The root zone of the chosen rule about each tree, within it that of the roots that hold it up, and hatched what digs take. */
export function drawRootZones(
  trees: readonly TreeZones[],
  excavations: readonly Excavation[],
  words: DrawingWords,
  units: Units,
  into: LayerBuilder,
): void {
  for (const { tree, at, chosen, held } of trees) {
    const target = { kind: 'feature', id: tree } as const;
    const name = (zone: RootZone, turn: number) => {
      const text = words.rootZone?.(zone, units) ?? '';
      const [first, ...elsewhere] = NAME_AZIMUTHS.map((azimuth) =>
        pointAtAzimuth(at, radians(azimuth + turn), zone.radius),
      );
      if (text === '' || first === undefined) return;
      into.label('root-zones', {
        id: `${tree}/root-zone/${zone.is}`,
        text,
        at: first,
        elsewhere,
        height: TEXT_MM.small,
        ink: 'plant',
        weight: 'regular',
        priority: PRIORITY.rootZone,
        seat: 'centre',
        clear: 0,
        whenCrowded: 'leave-out',
        target,
      });
    };
    const { radius, rule } = chosen;
    for (const { ground } of excavations) {
      const taken = intersectionOf([ellipseOutline(at, radius, radius, 0)], ground?.outline ?? []);
      drawTaken(taken, into);
    }
    into.add('root-zones', { kind: 'circle', centre: at, radius, stroke: ZONE });
    name({ is: 'chosen', rule, radius }, 0);
    into.add('root-zones', { kind: 'circle', centre: at, radius: held.radius, stroke: INNER });
    name({ is: held.is, rule, radius: held.radius }, INNER_TURN);
  }
}

function drawTaken(taken: Region, into: LayerBuilder): void {
  if (taken.length === 0) return;
  into.add('root-zones', { kind: 'line', points: fillRing(taken), closed: true, fill: TAKEN });
}
