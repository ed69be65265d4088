import type { EarthPoint } from '@footmark/site';
import { type GeoBox, isInBox, offMiddle } from '../geoBox';
import type { GridSystem } from '../gridSystem';
import { gridUnits } from '../gridUnit';

/** A zone of the State Plane Coordinate System of 1983, with the systems that the register has for it: feet before metres. */
export type StatePlaneZone = {
  readonly name: string;
  readonly area: GeoBox;
  readonly systems: readonly GridSystem[];
};

/**
 * All zones by name. The table (5 kB, from the EPSG register) is loaded when this is first asked for. NAD 83(2011) is the realization that the
 * register has beside the first; the projections are the same.
 */
export async function statePlaneZones(): Promise<readonly StatePlaneZone[]> {
  const { STATE_PLANE_ROWS } = await import('./statePlaneRows');
  return STATE_PLANE_ROWS.trim().split('\n').map(zoneOfRow);
}

/**
 * The zones whose area of use holds a place, the one in whose middle it lies most first. Areas are boxes about counties and overlap along
 * their edges, so that the first is a suggestion for people to confirm.
 */
export function zonesAt(zones: readonly StatePlaneZone[], place: EarthPoint): readonly StatePlaneZone[] {
  return zones
    .filter(({ area }) => isInBox(area, place))
    .sort((a, b) => offMiddle(a.area, place) - offMiddle(b.area, place));
}

function zoneOfRow(row: string): StatePlaneZone {
  const [name = '', box = '', shape = '', systems = ''] = row.split('|');
  const [westDeg = 0, southDeg = 0, eastDeg = 0, northDeg = 0] = box.split(',').map(Number);
  const area = { westDeg, southDeg, eastDeg, northDeg };
  const parameters = shape.replaceAll(/(^| )/g, '$1+');
  return {
    name,
    area,
    systems: systems.split(';').flatMap((text) => systemsOfText(text, { name, area, parameters })),
  };
}

type Zone = { readonly name: string; readonly area: GeoBox; readonly parameters: string };

/** The system in NAD 83 and in NAD 83(2011), as far as there are both. */
function systemsOfText(text: string, { name, area, parameters }: Zone): readonly GridSystem[] {
  const [units = '', x0 = '', y0 = '', code83 = '', code2011 = ''] = text.split(',');
  const unit = units === 'us-ft' || units === 'ft' ? gridUnits[units] : gridUnits.m;
  const definition = `${parameters} +x_0=${x0} +y_0=${y0} +ellps=GRS80 +towgs84=0,0,0,0,0,0,0 +units=${units} +no_defs`;
  const system = (datum: 'NAD83' | 'NAD83(2011)', code: string): readonly GridSystem[] =>
    code === '' ? [] : [{ kind: 'state-plane', epsg: Number(code), name, datum, unit, definition, area }];
  return [...system('NAD83', code83), ...system('NAD83(2011)', code2011)];
}
