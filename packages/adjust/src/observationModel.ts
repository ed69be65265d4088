// Indices of stations were checked by `checkProblem`; `as number` on x[...] says so.
import type { GradientRow, Observation, Station } from './observation';

/** What the observation would read if the unknowns were `x`: metres, radians, or the unit of a `custom`. */
export function computedValue(observation: Observation, x: Float64Array): number {
  switch (observation.kind) {
    case 'coordinate':
      return x[observation.unknown] as number;
    case 'distance': {
      const { from, to } = observation;
      return Math.hypot(xOf(to, x) - xOf(from, x), yOf(to, x) - yOf(from, x));
    }
    case 'azimuth':
      return azimuth(observation.from, observation.to, x);
    case 'angle':
      return (
        azimuth(observation.station, observation.foresight, x) -
        azimuth(observation.station, observation.backsight, x)
      );
    case 'offset': {
      const { point, from, to } = observation;
      const ax = xOf(from, x);
      const ay = yOf(from, x);
      const dx = xOf(to, x) - ax;
      const dy = yOf(to, x) - ay;
      const length = Math.hypot(dx, dy);
      return length === 0 ? 0 : (dx * (yOf(point, x) - ay) - dy * (xOf(point, x) - ax)) / length;
    }
    case 'custom':
      return observation.evaluate(x);
  }
}

/** Adds the derivatives of `computedValue` by the unknowns to `out`. */
export function addDerivatives(observation: Observation, x: Float64Array, out: GradientRow): void {
  switch (observation.kind) {
    case 'coordinate':
      out.add(observation.unknown, 1);
      return;
    case 'distance': {
      const { from, to } = observation;
      const dx = xOf(to, x) - xOf(from, x);
      const dy = yOf(to, x) - yOf(from, x);
      const length = Math.hypot(dx, dy);
      if (length === 0) return;
      addAt(to, dx / length, dy / length, out);
      addAt(from, -dx / length, -dy / length, out);
      return;
    }
    case 'azimuth':
      addAzimuth(observation.from, observation.to, 1, x, out);
      return;
    case 'angle':
      addAzimuth(observation.station, observation.foresight, 1, x, out);
      addAzimuth(observation.station, observation.backsight, -1, x, out);
      return;
    case 'offset': {
      // With n the left normal of the line and t the foot of the point as a share of from → to:
      // d/d point = n, d/d to = −t n, d/d from = −(1 − t) n.
      const { point, from, to } = observation;
      const ax = xOf(from, x);
      const ay = yOf(from, x);
      const dx = xOf(to, x) - ax;
      const dy = yOf(to, x) - ay;
      const length = Math.hypot(dx, dy);
      if (length === 0) return;
      const nx = -dy / length;
      const ny = dx / length;
      const t = (dx * (xOf(point, x) - ax) + dy * (yOf(point, x) - ay)) / (length * length);
      addAt(point, nx, ny, out);
      addAt(to, -t * nx, -t * ny, out);
      addAt(from, (t - 1) * nx, (t - 1) * ny, out);
      return;
    }
    case 'custom':
      observation.gradient(x, out);
  }
}

/** Computed less observed; for an angle wrapped to (−π, π]. */
export function residual(observation: Observation, x: Float64Array): number {
  const difference = computedValue(observation, x) - observation.value;
  return isAngular(observation) ? wrapAngle(difference) : difference;
}

function isAngular(observation: Observation): boolean {
  if (observation.kind === 'custom') return observation.angular === true;
  return observation.kind === 'azimuth' || observation.kind === 'angle';
}

/** The same angle in (−π, π], radians. An angle already there comes back unchanged, to the last bit. */
export function wrapAngle(angle: number): number {
  if (angle > -Math.PI && angle <= Math.PI) return angle;
  const turned = angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));
  return turned <= -Math.PI ? turned + 2 * Math.PI : turned;
}

function azimuth(from: Station, to: Station, x: Float64Array): number {
  return Math.atan2(xOf(to, x) - xOf(from, x), yOf(to, x) - yOf(from, x));
}

function addAzimuth(from: Station, to: Station, sign: number, x: Float64Array, out: GradientRow): void {
  const dx = xOf(to, x) - xOf(from, x);
  const dy = yOf(to, x) - yOf(from, x);
  const squared = dx * dx + dy * dy;
  if (squared === 0) return;
  const byX = (sign * dy) / squared;
  const byY = (-sign * dx) / squared;
  addAt(to, byX, byY, out);
  addAt(from, -byX, -byY, out);
}

function addAt(station: Station, byX: number, byY: number, out: GradientRow): void {
  if ('fixed' in station) return;
  out.add(station.at, byX);
  out.add(station.at + 1, byY);
}

function xOf(station: Station, x: Float64Array): number {
  return 'fixed' in station ? station.fixed.x : (x[station.at] as number);
}

function yOf(station: Station, x: Float64Array): number {
  return 'fixed' in station ? station.fixed.y : (x[station.at + 1] as number);
}
