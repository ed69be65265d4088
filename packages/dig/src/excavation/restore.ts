import {
  differenceOf,
  intersectionArea,
  intersectionOf,
  type Region,
  regionArea,
  regionBox,
  unionOf,
} from '@footmark/geometry';
import type { Restore } from './excavation';
import { isNear, OVERLAP_M2, regionOf, type Surroundings } from './surroundings';

/** What has to be put back where the top outline was. What lies under a building is neither. */
export function restoreOf(top: Region, around: Surroundings): Restore {
  const box = regionBox(top);
  const near = (f: Surroundings['all'][number]) => isNear(f, box);
  const pavements = around.pavements.filter(near);
  const paved = unionOf(pavements.map((f) => intersectionOf(top, regionOf(f))));
  const open = differenceOf(top, [...pavements, ...around.buildings.filter(near)].map(regionOf));
  const rest = regionArea(open);
  const lots = around.lots.map(regionOf);
  const lawn = lots.length === 0 ? rest : intersectionArea(open, unionOf(lots));
  return {
    pavements: pavements.flatMap((f) => {
      const area = intersectionArea(top, regionOf(f));
      return area > OVERLAP_M2 ? [{ feature: f.feature.id, area }] : [];
    }),
    paved: regionArea(paved),
    lawn,
    beyond: Math.max(0, rest - lawn),
  };
}
