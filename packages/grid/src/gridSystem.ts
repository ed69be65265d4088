import type { GeoBox } from './geoBox';
import type { GridUnit } from './gridUnit';

/** The datum that a system's register names; null where a typed definition says what it is itself. */
export type GridDatum = 'NAD83' | 'NAD83(2011)' | 'WGS84';

/** A map's coordinates that a site can be given in: eastings and northings of a projection. Plain data. */
export type GridSystem = {
  readonly kind: 'state-plane' | 'utm' | 'typed';
  /** In the EPSG register; null for a typed definition without one. */
  readonly epsg: number | null;
  /** Such as `Pennsylvania South`, `18N`, or what was typed. */
  readonly name: string;
  readonly datum: GridDatum | null;
  readonly unit: GridUnit;
  /** PROJ string or WKT, units included. */
  readonly definition: string;
  /** Where it is meant to be used; null where that is not known. */
  readonly area: GeoBox | null;
};
