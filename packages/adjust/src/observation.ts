/** A plane point of an observation: known coordinates, or the unknowns at indices `at` (x) and `at + 1` (y). */
export type Station = Readonly<{ fixed: Readonly<{ x: number; y: number }> }> | Readonly<{ at: number }>;

/** Receives one row of derivatives. Adding to the same unknown twice sums. */
export type GradientRow = { add(unknown: number, derivative: number): void };

type Measured = Readonly<{
  /** Names the observation in findings and in errors. */
  id: string;
  /** Observed value: metres or radians, or the unit of a `custom` observation. */
  value: number;
  /** Standard deviation of the value, > 0, in its unit. */
  sigma: number;
}>;

/** One unknown, observed directly. */
export type CoordinateObservation = Measured & Readonly<{ kind: 'coordinate'; unknown: number }>;

// Where two stations that define a direction coincide, its derivatives, and the azimuth or offset itself, count as zero:
// the observation then determines nothing, and the result says what is left undetermined.

/** Plane distance, metres. */
export type DistanceObservation = Measured & Readonly<{ kind: 'distance'; from: Station; to: Station }>;

/** Azimuth, radians clockwise from +y. The residual is wrapped to (−π, π]. */
export type AzimuthObservation = Measured & Readonly<{ kind: 'azimuth'; from: Station; to: Station }>;

/** Angle at `station`, radians clockwise from backsight to foresight. The residual is wrapped to (−π, π]. */
export type AngleObservation = Measured &
  Readonly<{ kind: 'angle'; station: Station; backsight: Station; foresight: Station }>;

/** Signed distance of `point` from the line through `from` and `to`, metres, positive to the left of from → to. */
export type OffsetObservation = Measured &
  Readonly<{ kind: 'offset'; point: Station; from: Station; to: Station }>;

/** Any other function of the unknowns. `angular` wraps the residual to (−π, π]. */
export type CustomObservation = Measured &
  Readonly<{
    kind: 'custom';
    angular?: boolean;
    /** The computed value. Not finite means 'not defined here': a step that leads there is refused. */
    evaluate(x: Float64Array): number;
    /** Adds the derivatives that are not zero. */
    gradient(x: Float64Array, out: GradientRow): void;
  }>;

export type Observation =
  | CoordinateObservation
  | DistanceObservation
  | AzimuthObservation
  | AngleObservation
  | OffsetObservation
  | CustomObservation;
