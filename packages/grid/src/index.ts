export type { GeoBox } from './geoBox';
export { type GridFactors, gridFactors, MEAN_RADIUS_M } from './gridFactors';
export { type GridNote, gridNotes } from './gridNotes';
export type { GridDatum, GridSystem } from './gridSystem';
export { type GridUnit, gridUnitOf, gridUnits } from './gridUnit';
export { epsgInName, knownSystem } from './knownSystem';
export {
  earthToGrid,
  type Grid,
  type GridPoint,
  gridToEarth,
  gridToPlan,
  openGrid,
  planToGrid,
} from './openGrid';
export { type StatePlaneZone, statePlaneZones, zonesAt } from './statePlane/statePlane';
export { typedSystem } from './typedSystem';
export { type UtmZone, utmSystem, utmZoneAt } from './utm';
