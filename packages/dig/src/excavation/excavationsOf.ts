import { locate, type Point, polylineLength, regionArea, unionOf } from '@footmark/geometry';
import type { Derived, Dig, Site } from '@footmark/site';
import { type TreeZones, treeZones } from '../trees/treeZones';
import { bottomOutline, type Cut, cutBack, cutLayer, cutLength, middleLine, pieceOfTop } from './cut';
import { cutVolume } from './cutVolume';
import { type Sounding, soundDig } from './digDepth';
import { type Holes, markOfPit, placeDig } from './digPlace';
import { egressPlaces } from './egress';
import type { Excavation } from './excavation';
import { type ExcavationFinding, sayOf } from './excavationFinding';
import { sayOfFootings } from './footings';
import { sayOfTop } from './overTop';
import { type KnownDepth, sayOfDepth } from './protective';
import { restoreOf } from './restore';
import { sidesOf } from './soilSlope';
import { spoilOf } from './spoil';
import { type Surroundings, surroundingsOf } from './surroundings';

type Around = Surroundings & { readonly trees: readonly TreeZones[] };

/**
 * Every planned dig of a site with all that follows from it, in the order of the site. `holes`: by reading, the hole that holds its
 * mark, as the fit has it.
 */
export function excavationsOf(site: Site, derived: Derived, holes: Holes): readonly Excavation[] {
  if (site.digging.digs.length === 0) return [];
  const around = { ...surroundingsOf(derived), trees: treeZones(site, derived).trees };
  return site.digging.digs.map((dig) => excavationOf(site, derived, holes, dig, around));
}

function excavationOf(site: Site, derived: Derived, holes: Holes, dig: Dig, around: Around): Excavation {
  const findings: ExcavationFinding[] = [];
  const say = sayOf(dig, middleOf(derived, dig), findings);
  const sides = sidesOf(site, dig, say);
  const place = placeDig(site, derived, holes, dig, say);
  const nothing = { depth: null, top: null, volume: null, spoil: null, restore: null };
  if (place === null)
    return {
      dig,
      path: null,
      line: [],
      sides,
      bottom: null,
      cuts: [],
      ground: null,
      egress: [],
      ...nothing,
      findings,
    };
  const { path, line, width } = place;
  const bottom = { length: cutLength(line), width, outline: bottomOutline(line, width) };
  const { whole, pieces } = soundDig(site, derived, dig, place, say);
  const cuts = pieces.map((points): Cut => ({ points, width, slope: sides.slope, upright: sides.upright }));
  const [cut] = whole === null ? [] : cuts;
  const ground = {
    outline: cut === undefined ? unionOf([bottom.outline, ...cuts.map(pieceOfTop)]) : cutLayer(cut, 1),
    atLeast: whole === null,
  };
  sayOfDepth(site, whole?.depth ?? deepestOf(pieces), sides, bottom, say);
  const egress = egressPlaces(site, pieces, whole === null, say);
  const volume = cut === undefined ? null : cutVolume(cut);
  const spoil =
    cut === undefined || volume === null ? null : spoilOf(site, cut, volume, dig.spoil, around, say);
  sayOfTop({ ground, cuts }, around, say);
  sayOfFootings(site, { cuts, bottom: bottom.outline, sides, atLeast: ground.atLeast }, around, say);
  const about = { dig, path, line, sides, bottom, cuts, ground, egress, findings };
  if (whole === null || cut === undefined) return { ...about, ...nothing };

  const { outline } = ground;
  const top = {
    width: width + 2 * cutBack(sides, whole.depth.most),
    length: polylineLength(middleLine(cut)),
    outline,
    area: regionArea(outline),
  };
  return { ...about, depth: whole.depth, top, volume, spoil, restore: restoreOf(outline, around) };
}

/** Of a dig whose depth is not known all along, the deepest that is known of it; null where nothing is. */
function deepestOf(pieces: Sounding['pieces']): KnownDepth | null {
  const depths = pieces.flat().map((p) => p.depth);
  return depths.length === 0 ? null : { most: Math.max(...depths), sigma: null };
}

/** A place to show findings about a dig at: its mark, or the pipe's point half way along it. */
function middleOf(derived: Derived, dig: Dig): Point | null {
  if (dig.is === 'pit') return markOfPit(derived, dig)?.at ?? null;
  const on = derived.paths.get(dig.path);
  return on === undefined ? null : locate(on.line, (dig.from + dig.to) / 2).point;
}
