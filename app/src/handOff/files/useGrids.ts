import {
  type GridSystem,
  type StatePlaneZone,
  statePlaneZones,
  utmSystem,
  utmZoneAt,
  zonesAt,
} from '@footmark/grid';
import { type EarthPoint, planToEarth } from '@footmark/site';
import { useEffect, useState } from 'react';
import { useDerived } from '../../session/siteSession';

/** So many zones are suggested: a place lies in one, near an edge in two or three by their boxes. */
const MOST_ZONES = 3;

/** Where on the earth the site is, null while that is not known, and the systems that maps of that place are in. */
export function useGrids(): { readonly place: EarthPoint | null; readonly systems: readonly GridSystem[] } {
  const place = usePlace();
  const zones = useZones();
  if (place === null) return { place, systems: [] };
  const utm = utmZoneAt(place);
  const systems = [
    ...zonesAt(zones, place)
      .slice(0, MOST_ZONES)
      .flatMap((zone) => zone.systems),
    ...(utm === null ? [] : [utmSystem(utm)]),
  ];
  return { place, systems };
}

function usePlace(): EarthPoint | null {
  const { frame, points } = useDerived();
  if (frame.toEarth === null) return null;
  const [first] = points.values();
  const place = planToEarth(frame.toEarth, first?.at ?? { x: 0, y: 0 });
  return place.ok ? place.value : null;
}

const NONE: readonly StatePlaneZone[] = [];

/** The table comes when it is first asked for. */
function useZones(): readonly StatePlaneZone[] {
  const [zones, setZones] = useState(NONE);
  useEffect(() => void statePlaneZones().then(setZones), []);
  return zones;
}
