import type { Observation, Station } from '@footmark/adjust';
import { normal, seededRandom } from '../random/seeded';

/** Twenty yards, 3 to 20 points, with two to four times as many observations as unknowns. */
export const YARDS = Array.from({ length: 20 }, (_, k) => {
  const points = 3 + ((7 * k) % 18);
  return { seed: k + 1, points, count: Math.ceil(points * (4.5 + (k % 4))) };
});

export type Network = { estimates: number[]; observations: Observation[]; truth: number[] };

/**
 * A yard of `points` unknown points on a jittered grid of 8 m, held by the four corners of the house, with `count`
 * observations of every kind between neighbours: true value plus normal noise of its sigma. Starts are off by up to 0.4 m.
 */
export function seededNetwork(seed: number, points: number, count: number): Network {
  const random = seededRandom(seed);
  const width = Math.ceil(Math.sqrt(points));
  const truth: number[] = [];
  for (let i = 0; i < points; i++) {
    truth.push(8 * (i % width) + 3 * random(), 8 * Math.floor(i / width) + 3 * random());
  }
  const corner = (x: number, y: number): Station => ({ fixed: { x, y } });
  const house = [
    corner(-6, -5),
    corner(8 * width + 4, -7),
    corner(8 * width + 6, 8 * width + 5),
    corner(-9, 8 * width),
  ];
  const placeOf = (s: Station) =>
    'fixed' in s ? s.fixed : { x: truth[s.at] ?? Number.NaN, y: truth[s.at + 1] ?? Number.NaN };
  const azimuth = (a: Station, b: Station) =>
    Math.atan2(placeOf(b).x - placeOf(a).x, placeOf(b).y - placeOf(a).y);
  const near = (i: number): Station => {
    if (random() < 0.15) return house[Math.floor(4 * random())] as Station; // index in 0 … 3
    const steps = [1, -1, width, -width, width + 1, 2];
    const j = i + (steps[Math.floor(steps.length * random())] ?? 1);
    return j >= 0 && j < points ? { at: 2 * j } : (house[Math.floor(4 * random())] as Station); // index in 0 … 3
  };
  const observations: Observation[] = [];
  for (let k = 0; k < count; k++) {
    const i = k % points;
    const at: Station = { at: 2 * i };
    const round = Math.floor(k / points);
    const id = `${k}`;
    if (round < 2) {
      // Two rounds of distances to two corners of the house fix every point.
      const from = house[(i + round) % 4] as Station; // index in 0 … 3
      const sigma = 0.02;
      const value = Math.hypot(placeOf(from).x - placeOf(at).x, placeOf(from).y - placeOf(at).y);
      observations.push({ kind: 'distance', id, from, to: at, sigma, value: value + sigma * normal(random) });
      continue;
    }
    const a = near(i);
    let b = near(i);
    while (JSON.stringify(b) === JSON.stringify(a)) b = near(i);
    switch (k % 5) {
      case 0: {
        const sigma = 0.05;
        const unknown = 2 * i + (random() < 0.5 ? 0 : 1);
        observations.push({
          kind: 'coordinate',
          id,
          unknown,
          sigma,
          value: (truth[unknown] ?? 0) + sigma * normal(random),
        });
        break;
      }
      case 1: {
        const sigma = 0.01;
        const value = Math.hypot(placeOf(a).x - placeOf(at).x, placeOf(a).y - placeOf(at).y);
        observations.push({
          kind: 'distance',
          id,
          from: at,
          to: a,
          sigma,
          value: value + sigma * normal(random),
        });
        break;
      }
      case 2: {
        const sigma = 0.004;
        observations.push({
          kind: 'azimuth',
          id,
          from: at,
          to: a,
          sigma,
          value: azimuth(at, a) + sigma * normal(random),
        });
        break;
      }
      case 3: {
        const sigma = 0.003;
        const value = azimuth(at, b) - azimuth(at, a) + sigma * normal(random);
        observations.push({ kind: 'angle', id, station: at, backsight: a, foresight: b, sigma, value });
        break;
      }
      default: {
        const sigma = 0.02;
        const [p, q, r] = [placeOf(at), placeOf(a), placeOf(b)];
        const length = Math.hypot(r.x - q.x, r.y - q.y);
        const value =
          ((r.x - q.x) * (p.y - q.y) - (r.y - q.y) * (p.x - q.x)) / length + sigma * normal(random);
        observations.push({ kind: 'offset', id, point: at, from: a, to: b, sigma, value });
      }
    }
  }
  const estimates = truth.map((value) => value + 0.8 * (random() - 0.5));
  return { estimates, observations, truth };
}
