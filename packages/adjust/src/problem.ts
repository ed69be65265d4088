import type { Observation, Station } from './observation';

export type Problem = Readonly<{
  /** Start values, one per unknown. */
  estimates: readonly number[];
  observations: readonly Observation[];
}>;

/**
 * Throws a RangeError that names the value when a start value, observed value or fixed coordinate is not finite, a
 * sigma is not finite and positive, or an index is not that of an unknown: a programmer's mistakes, not bad data.
 */
export function checkProblem({ estimates, observations }: Problem): void {
  estimates.forEach((value, i) => {
    requireFinite(value, `estimates[${i}]`);
  });
  for (const observation of observations) {
    const name = `observation "${observation.id}"`;
    requireFinite(observation.value, `${name}: value`);
    requireFinite(observation.sigma, `${name}: sigma`);
    if (observation.sigma <= 0)
      throw new RangeError(`${name}: sigma is ${observation.sigma}, must be above 0`);
    if (observation.kind === 'coordinate') {
      requireUnknown(observation.unknown, estimates.length, `${name}: unknown`);
    }
    for (const [role, station] of stationsOf(observation)) {
      if ('fixed' in station) {
        requireFinite(station.fixed.x, `${name}: ${role}.fixed.x`);
        requireFinite(station.fixed.y, `${name}: ${role}.fixed.y`);
      } else {
        requireUnknown(station.at, estimates.length - 1, `${name}: ${role}.at`);
      }
    }
  }
}

function stationsOf(observation: Observation): readonly (readonly [string, Station])[] {
  switch (observation.kind) {
    case 'coordinate':
    case 'custom':
      return [];
    case 'distance':
    case 'azimuth':
      return [
        ['from', observation.from],
        ['to', observation.to],
      ];
    case 'angle':
      return [
        ['station', observation.station],
        ['backsight', observation.backsight],
        ['foresight', observation.foresight],
      ];
    case 'offset':
      return [
        ['point', observation.point],
        ['from', observation.from],
        ['to', observation.to],
      ];
  }
}

function requireFinite(value: number, name: string): void {
  if (!Number.isFinite(value)) throw new RangeError(`${name} is ${value}, must be finite`);
}

function requireUnknown(index: number, end: number, name: string): void {
  if (!Number.isInteger(index) || index < 0 || index >= end) {
    throw new RangeError(`${name} is ${index}, not the index of an unknown`);
  }
}
