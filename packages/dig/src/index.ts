export { type ByMoved, whileMoved } from './byMoved';
export type { ClearanceFinding, ClearanceFindingValues } from './clearances/clearanceFinding';
export { clearanceFindings } from './clearances/clearanceFindings';
export { type Required, requiredOn, toleranceZone } from './clearances/clearanceRule';
export { type ClearanceOptions, clearances, clearancesFrom, worstFirst } from './clearances/clearances';
export type { DigOutline } from './clearances/digOutline';
export { type ClearanceVerdict, clearanceTo, type EdgeClearance } from './clearances/edgeClearance';
export { type FeatureIndex, featureIndex } from './clearances/featureIndex';
export type { NearStretch } from './clearances/stretchesNear';
export {
  markSubject,
  outlineSubject,
  pathSubject,
  type Subject,
  type SubjectIs,
  subjectsOf,
} from './clearances/subject';
export { concerns } from './concerns';
export { type CrewHole, type Danger, dangersAt } from './dangersAt';
export type { DigFinding, DigSeverity } from './digFinding';
export type { CleanoutAsked, CleanoutReason, NarrowCleanout } from './drain/cleanouts';
export type { CoverAt, CoverCheck, CoverEnd, CoverUnknown, CoverVerdict } from './drain/coverCheck';
export type { DrainCheck } from './drain/drainCheck';
export { type DrainChecks, drainChecks } from './drain/drainChecks';
export type { DrainFinding, DrainFindingValues, WaterUnknown } from './drain/drainFinding';
export type { FallAsked, FallAvailable, FallCheck, FallSaid } from './drain/fallCheck';
export type { FlowCheck } from './drain/flowCheck';
export type { TapDepth } from './drain/tapDepth';
export type { Turn } from './drain/turns';
export type { WaterSeparation, WaterVerdict } from './drain/waterSeparation';
export { type Cut, cutBack } from './excavation/cut';
export { digOutlines } from './excavation/digOutlines';
export type { Holes } from './excavation/digPlace';
export type {
  DigDepth,
  EgressPlace,
  Excavation,
  Restore,
  Sides,
  Spoil,
  SpoilHeap,
  SpoilSide,
} from './excavation/excavation';
export {
  type ExcavationFinding,
  type ExcavationFindingValues,
  targetOfDig,
} from './excavation/excavationFinding';
export { excavationsOf } from './excavation/excavationsOf';
export {
  type Footing,
  type FootingReach,
  footingOf,
  footingReach,
} from './excavation/footings';
export { standsOnFootings } from './excavation/surroundings';
export { slopeReaching, type TrenchReach, trenchReach } from './excavation/trenchReach';
export { findingSubject } from './findingSubject';
export type { Land, LandCrossing, LandMark, LandStretch } from './land/land';
export type { LandFinding, LandFindingValues } from './land/landFinding';
export { landOf } from './land/landOf';
export { type Lot, type Lots, lotsOf } from './land/lots';
export type { Whose, WhoseAt } from './land/whose';
export { type DigInZone, type PathInZone, zoneHalfWidth } from './services/handDig';
export { type OneCallState, oneCallState } from './services/oneCallState';
export type { MissingHeight, ServiceCrossing } from './services/serviceCrossings';
export type { ServiceFinding, ServiceFindingValues } from './services/serviceFinding';
export { type Services, servicesOf } from './services/servicesOf';
export { type WhiteLine, whiteLines } from './services/whiteLines';
export { type AnyDigFinding, type InTheWay, standsInTheWay } from './standsInTheWay';
export { type BoreUnder, boreDistanceRule, boreUnder } from './trees/boreUnder';
export type { DigByTree, TreeTaken, ZoneTaken } from './trees/digInZones';
export { type Encroachment, encroachmentOf } from './trees/encroachment';
export type { HoldingRoots } from './trees/holdingRoots';
export type { PipeByTree, PipeInZone } from './trees/pipeInZones';
export type { TreeAssumption } from './trees/treeAssumption';
export { type TreeEncroachments, treeEncroachments } from './trees/treeEncroachments';
export type { TreeFinding, TreeFindingValues } from './trees/treeFinding';
export { type TreeZone, treeZone } from './trees/treeZone';
export { type TreeZones, treeZones } from './trees/treeZones';
