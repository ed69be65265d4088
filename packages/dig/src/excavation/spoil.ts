import { differenceOf, type Region, stripRegion } from '@footmark/geometry';
import { ruleValue, type Site } from '@footmark/site';
import type { TreeZones } from '../trees/treeZones';
import { type Cut, cutBack, cutLength, grownCut } from './cut';
import type { Spoil, SpoilHeap, SpoilSide } from './excavation';
import type { Say } from './excavationFinding';
import { blockedBy } from './spoilRoom';
import type { Surroundings } from './surroundings';

/**
 * The heap of what is dug out: loose it takes `soilSwell` of its room in the ground, and lies as long as the dig with a triangular
 * section of area A whose sides stand at m across to one down, so √(4·m·A) wide. Where nobody chose a side, the one with room is
 * taken, left first; where the ground has room on neither, away.
 */
export function spoilOf(
  site: Site,
  cut: Cut,
  volume: number,
  chosen: SpoilSide | 'away' | undefined,
  around: Surroundings & { readonly trees: readonly TreeZones[] },
  say: Say,
): Spoil {
  const loose = volume * ruleValue(site, 'soilSwell');
  const [m, setback] = [ruleValue(site, 'spoilSlope'), ruleValue(site, 'spoilSetback')];
  const section = loose / cutLength(cut.points);
  const width = Math.sqrt(4 * m * section);
  const keptFree = grownCut(cut, (depth) => cutBack(cut, depth) + setback);
  const heap = (side: SpoilSide): SpoilHeap => {
    const outline = heapOutline(cut, side, setback + width, keptFree);
    const reach = heapOutline(cut, side, setback + width, []);
    return { outline, blocked: blockedBy(outline, reach, around) };
  };
  const [left, right] = [heap('left'), heap('right')];
  const suggested = left.blocked.length === 0 ? 'left' : right.blocked.length === 0 ? 'right' : 'away';
  const side = chosen ?? suggested;
  const height = section === 0 ? 0 : (2 * section) / width;
  const spoil: Spoil = { volume: loose, width, height, setback, left, right, suggested, side };
  sayOfSpoil(spoil, chosen, say);
  return spoil;
}

/** The strip along one side from the middle line to `beyond` the top edge, less what is kept free. */
function heapOutline(cut: Cut, side: SpoilSide, beyond: number, keptFree: Region): Region {
  const strip = stripRegion(
    cut.points.map(({ at, depth }) => {
      const reach = cut.width / 2 + cutBack(cut, depth) + beyond;
      return { at, left: side === 'left' ? reach : 0, right: side === 'right' ? reach : 0 };
    }),
  );
  return keptFree.length === 0 ? strip : differenceOf(strip, [keptFree]);
}

function sayOfSpoil(spoil: Spoil, chosen: SpoilSide | 'away' | undefined, say: Say): void {
  const rule = { rule: 'spoilSetback' } as const;
  const { setback, width, height, volume, side, suggested } = spoil;
  if (side !== 'away') say('spoil-kept-back', 'note', { setback, width, height, volume, side }, rule);
  if (chosen === undefined && suggested === 'away') {
    const features = [...new Set([...spoil.left.blocked, ...spoil.right.blocked])];
    say('spoil-without-room', 'should', { side: null, suggested, features }, rule);
  }
  if ((chosen === 'left' || chosen === 'right') && spoil[chosen].blocked.length > 0)
    say('spoil-without-room', 'should', { side: chosen, suggested, features: spoil[chosen].blocked }, rule);
}
