import { formatTurn, type Ref, type Site, type Spot } from '@footmark/site';
import { directionText, lengthText } from '@footmark/words';
import { pointName } from './pointChoices';

/** How a point was measured, in a line: `12′ from House corner A, 9′ 6″ from Pole`. */
export function spotText(spot: Spot, site: Site): string {
  const length = (metres: number) => lengthText(metres, site.units);
  const name = (ref: Ref) => pointName(site, ref);
  switch (spot.by) {
    case 'finger':
      return 'Put there by eye';
    case 'coordinates':
      return `East ${length(spot.x)}, north ${length(spot.y)}`;
    case 'tapes':
      return spot.tapes.map((tape) => `${length(tape.distance)} from ${name(tape.from)}`).join(', ');
    case 'offset': {
      const along = `${length(spot.along)} along from ${name(spot.from)} to ${name(spot.to)}`;
      return spot.out === 0
        ? along
        : `${along}, ${length(Math.abs(spot.out))} ${spot.out > 0 ? 'right' : 'left'}`;
    }
    case 'bearing':
      return `${directionText(spot.azimuth, site.units)}, ${length(spot.distance)} from ${name(spot.from)}`;
    case 'between': {
      const share = spot.fraction === 0.5 ? 'Half way' : `${Math.round(spot.fraction * 100)} % of the way`;
      return `${share} from ${name(spot.from)} to ${name(spot.to)}`;
    }
    case 'at':
      return `At ${name(spot.point)}`;
    case 'course':
      return `${directionText(spot.azimuth, site.units)}, ${length(spot.distance)}`;
    case 'turn':
      return `${formatTurn(spot.turn)}, ${length(spot.distance)}`;
    case 'arc':
      return `Curve ${formatTurn(spot.sweep)}, radius ${length(spot.radius)}`;
  }
}
