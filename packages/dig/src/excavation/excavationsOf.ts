import { locate, type Point, regionArea } from '@footmark/geometry';
import type { Derived, Dig, Site } from '@footmark/site';
import { type TreeZones, treeZones } from '../trees/treeZones';
import { bottomOutline, type Cut, cutLayer, cutLength } from './cut';
import { cutVolume } from './cutVolume';
import { deepLine } from './digDepth';
import { type Holes, markOfPit, placeDig } from './digPlace';
import { egressPlaces } from './egress';
import type { Excavation } from './excavation';
import { type ExcavationFinding, sayOf } from './excavationFinding';
import { sayOfFootings } from './footings';
import { sayOfTop } from './overTop';
import { sayOfDepth } from './protective';
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
  const nothing = { depth: null, top: null, volume: null, spoil: null, egress: [], restore: null };
  if (place === null) return { dig, path: null, line: [], sides, bottom: null, ...nothing, findings };
  const { path, line, width } = place;
  const bottom = { length: cutLength(line), width, outline: bottomOutline(line, width) };
  const deep = deepLine(site, derived, dig, place, say);
  if (deep === null) return { dig, path, line, sides, bottom, ...nothing, findings };

  const { points, depth } = deep;
  const cut: Cut = { points, width, slope: sides.slope };
  const outline = cutLayer(cut, 1);
  const volume = cutVolume(cut);
  sayOfDepth(site, depth, sides, say);
  const egress = egressPlaces(site, points, say);
  const spoil = spoilOf(site, cut, volume, dig.spoil, around, say);
  sayOfTop(outline, around, say);
  sayOfFootings(site, { points, width, sides, bottom: bottom.outline }, around, say);
  return {
    dig,
    path,
    line,
    depth,
    sides,
    bottom,
    top: { width: width + 2 * sides.slope * depth.most, outline, area: regionArea(outline), points },
    volume,
    spoil,
    egress,
    restore: restoreOf(outline, around),
    findings,
  };
}

/** A place to show findings about a dig at: its mark, or the pipe's point half way along it. */
function middleOf(derived: Derived, dig: Dig): Point | null {
  if (dig.is === 'pit') return markOfPit(derived, dig)?.at ?? null;
  const on = derived.paths.get(dig.path);
  return on === undefined ? null : locate(on.line, (dig.from + dig.to) / 2).point;
}
