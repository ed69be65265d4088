export { type AdjustOptions, adjust } from './adjust';
export type {
  Adjustment,
  CovarianceBlock,
  GlobalTest,
  Gradient,
  Singular,
  Solved,
  Stopped,
  Suspect,
  SuspectGroup,
} from './adjustment';
export { chiSquareQuantile } from './chiSquare';
export { type ErrorEllipse, ellipseFactor, ellipseFactor95, errorEllipse } from './errorEllipse';
export type { Solver } from './factor';
export type {
  AngleObservation,
  AzimuthObservation,
  CoordinateObservation,
  CustomObservation,
  DistanceObservation,
  GradientRow,
  Observation,
  OffsetObservation,
  Station,
} from './observation';
export type { Problem } from './problem';
