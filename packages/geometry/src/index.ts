export {
  azimuthBetween,
  deflectionBetween,
  degrees,
  normalizeAzimuth,
  pointAtAzimuth,
  radians,
  signedAngle,
} from './angle';
export { lengthAlongArc, pointsOnArc, radiusOfArc, segmentArea } from './arc';
export { arcFromPlat, type PlatArc, type PlatArcProblem, type SolvedArc } from './arcFromPlat';
export { arcRingArea, arcRingPerimeter, flattenArcs } from './arcLine';
export { circleRegionArea, circleRingArea } from './circleRingArea';
export { type CircleCuts, closestApproach, cutAngleAt, intersectCircles } from './circles';
export {
  pointToCircle,
  pointToPolyline,
  pointToRing,
  polylineToCircle,
  polylineToPolyline,
  polylineToRing,
} from './clearance';
export type { Clearance } from './clearanceType';
export { differenceOf, intersectionArea, intersectionOf, regionArea, unionOf } from './combineRegions';
export { arcLength, cableSaved, external, longChord, middleOrdinate, tangentLength } from './curve';
export {
  type DevelopedProfile,
  developedAt,
  developedProfile,
  type SlopeStretch,
  stationAtDeveloped,
  type VerticalDrop,
} from './developed';
export { ellipseOutline } from './ellipseOutline';
export { boundingRectangleAlong, type HalfExtents } from './ellipseRectangle';
export { type ErrorEllipse, errorEllipse, type PlaneCovariance, tapeFixCovariance } from './errorEllipse';
export { chordStations, flattenPath, slicePath } from './flattenPath';
export { lineInRegion } from './lineInRegion';
export { locate, locateMany, type PathPlace } from './locate';
export { manningFlow, type PipeFlow } from './manning';
export { type PathStretch, pathInCircle } from './pathInCircle';
export {
  type PathElement,
  type PathLine,
  type PathLineProblem,
  type PathVertex,
  pathLength,
  pathLine,
  stationOfVertex,
} from './pathLine';
export {
  add,
  cross,
  distance,
  dot,
  equalPoints,
  interpolate,
  midpoint,
  type Point,
  rotate,
  scale,
  subtract,
} from './point';
export { type NearestOnPolyline, nearestOnPolyline, polylineLength } from './polyline';
export type { KnownPoint, ReachArc } from './reachArcs';
export { type Reach, type ReachProblem, reachOf } from './reachOf';
export { type PipeReach, pipeReach, withinPipeReach } from './reachOfPipe';
export { cableFromCounter, entryLeg } from './reading';
export { boxesMeet, type Region, type RegionBox, regionBox } from './region';
export { type Failure, fail, ok, type Result, type Success } from './result';
export {
  pointInRing,
  ringArea,
  ringPerimeter,
  type SegmentStretch,
  segmentCrossesRing,
  stretchesInRing,
} from './ring';
export { ringCrossesItself } from './ringCrossesItself';
export {
  intersectSegments,
  type NearestOnSegment,
  nearestOnSegment,
  type SegmentDistance,
  type SegmentIntersection,
  segmentDistance,
} from './segment';
export {
  applySimilarity,
  fitRigid,
  fitSimilarity,
  invertSimilarity,
  type PointPair,
  type Similarity,
  type SimilarityFit,
  type SimilarityProblem,
} from './similarity';
export { type PathOffset, stationOf } from './stationOf';
export { type StripPoint, stripRegion } from './stripRegion';
export { COINCIDENT_M, DEPTH_M, FOLD_RAD, NEGLIGIBLE_LENGTH_M } from './tolerances';
export {
  compassBalance,
  departureLatitude,
  lengthOfLeg,
  type TraverseClosure,
  type TraverseLeg,
  traverseClosure,
} from './traverse';
