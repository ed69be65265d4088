import type { Observation, Station } from '@footmark/adjust';
import { inverse, Matrix, QrDecomposition } from 'ml-matrix';

/**
 * A second implementation that shares nothing with the package: the functional model written anew, derivatives by central
 * differences with one Richardson step, dense QR and inverse of ml-matrix, plain Gauss–Newton.
 */
export function denseReference(start: readonly number[], observations: readonly Observation[]) {
  let x = [...start];
  for (let k = 0; k < 12; k++) {
    const { design, misclosure } = weightedSystem(x, observations);
    const step = new QrDecomposition(design).solve(misclosure);
    x = x.map((value, i) => value + step.get(i, 0));
  }
  const { design, misclosure } = weightedSystem(x, observations);
  const covariance = inverse(design.transpose().mmul(design));
  const hat = design.mmul(covariance).mmul(design.transpose());
  return {
    estimates: x,
    /** Weighted: derivatives over sigma. */
    design,
    covariance,
    /** Adjusted less observed, over sigma. */
    weightedResiduals: misclosure.to1DArray().map((value) => -value),
    redundancy: observations.map((_, i) => 1 - hat.get(i, i)),
    vTPv: misclosure.to1DArray().reduce((sum, value) => sum + value * value, 0),
  };
}

function weightedSystem(x: readonly number[], observations: readonly Observation[]) {
  const design = Matrix.zeros(observations.length, x.length);
  observations.forEach((observation, i) => {
    for (let j = 0; j < x.length; j++) {
      const slope = (h: number) => {
        const shifted = (sign: number) =>
          model(
            observation,
            x.map((v, k) => (k === j ? v + sign * h : v)),
          );
        return wrapped(observation, shifted(1) - shifted(-1)) / (2 * h);
      };
      design.set(i, j, (4 * slope(5e-4) - slope(1e-3)) / 3 / observation.sigma);
    }
  });
  const misclosure = Matrix.columnVector(
    observations.map((o) => wrapped(o, o.value - model(o, x)) / o.sigma),
  );
  return { design, misclosure };
}

function wrapped({ kind }: Observation, difference: number): number {
  return kind === 'azimuth' || kind === 'angle'
    ? Math.atan2(Math.sin(difference), Math.cos(difference))
    : difference;
}

function model(o: Observation, x: readonly number[]): number {
  const place = (s: Station) =>
    ('fixed' in s ? [s.fixed.x, s.fixed.y] : [x[s.at], x[s.at + 1]]) as [number, number]; // checked by the package
  const toward = (a: Station, b: Station) => {
    const [ax, ay] = place(a);
    const [bx, by] = place(b);
    return { dx: bx - ax, dy: by - ay, d: Math.sqrt((bx - ax) ** 2 + (by - ay) ** 2) };
  };
  const azimuth = (a: Station, b: Station) => {
    const { dx, dy } = toward(a, b);
    return Math.PI / 2 - Math.atan2(dy, dx);
  };
  switch (o.kind) {
    case 'coordinate':
      return x[o.unknown] ?? Number.NaN;
    case 'distance':
      return toward(o.from, o.to).d;
    case 'azimuth':
      return azimuth(o.from, o.to);
    case 'angle':
      return azimuth(o.station, o.foresight) - azimuth(o.station, o.backsight);
    case 'offset': {
      // Distance to the point times the sine of the turn from the line to it.
      const { d } = toward(o.from, o.point);
      return d * Math.sin(azimuth(o.from, o.to) - azimuth(o.from, o.point));
    }
    case 'custom':
      return o.evaluate(Float64Array.from(x));
  }
}
