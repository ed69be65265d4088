import {
  type Derived,
  proposedPaths,
  type SetOutPlace,
  type Site,
  setOutPlaces,
  tieChooser,
} from '@footmark/site';
import type { Highlight } from '../drawOptions';
import type { LayerBuilder } from '../layerBuilder';
import { PEN } from '../lineTypes';
import { symbols } from '../symbols/symbols';
import { PRIORITY, TEXT_MM } from '../textStyle';
import { drawTies } from './drawTies';

/**
 * Draws what is painted to set proposed pipes out: in white as all that is proposed, a diamond at a bend and a square elsewhere, each
 * with its label, and the tapes of the one that is chosen.
 */
export function drawSetOut(
  site: Site,
  derived: Derived,
  highlight: Highlight | undefined,
  into: LayerBuilder,
): void {
  const chosen = highlight?.setOut;
  for (const on of proposedPaths(derived)) {
    for (const place of setOutPlaces(site, on)) {
      const isChosen = chosen?.path === place.path && chosen.number === place.number;
      drawPlace(place, isChosen, into);
      if (!isChosen) continue;
      const ties = tieChooser(site, derived)(place.at);
      if (ties !== null)
        drawTies({ ...paintOf(place), at: place.at, ties }, derived.features, site.units, into);
    }
  }
}

function paintOf({ path, number }: SetOutPlace) {
  return { id: `${path}/set-out/${number}`, target: { kind: 'set-out', path, number } } as const;
}

function drawPlace(place: SetOutPlace, isChosen: boolean, into: LayerBuilder): void {
  const { at, label, is } = place;
  const { id, target } = paintOf(place);
  const symbol = is === 'bend' ? 'set-out-bend' : 'set-out-point';
  const upright = { kind: 'symbol', at, azimuth: 0, target } as const;
  into.add('marks', {
    ...upright,
    symbol,
    stroke: { ink: 'proposed-dash', weight: PEN.medium },
    fill: { ink: 'proposed', opacity: 1 },
  });
  if (isChosen) {
    into.add('marks', { ...upright, symbol: 'mark-chosen', stroke: { ink: 'survey', weight: PEN.medium } });
  }
  into.label('marks', {
    id,
    text: label,
    at,
    height: isChosen ? TEXT_MM.mark : TEXT_MM.landmark,
    ink: 'ink',
    weight: 'bold',
    priority: isChosen ? PRIORITY.chosenMark : PRIORITY.setOut,
    seat: 'around',
    clear: Math.max(symbols[symbol].clear, isChosen ? symbols['mark-chosen'].clear : 0),
    whenCrowded: isChosen ? 'always' : 'leader',
    target,
  });
}
