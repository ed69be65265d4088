// Source: Ghilani, Adjustment Computations, example 16.1, as carried in Krumm, Geodetic Network Adjustment Examples, Rev 3.5.
// Coordinates and standard deviations are published; sigma, covariance and ellipse were computed by an independent program.
import { errorEllipse, type Observation } from '@footmark/adjust';
import { expect, it } from 'vitest';
import { fixed, solved, tape, unknown } from './solved';

const q = fixed(1000, 800);
const r = fixed(1000, 1000);
const s = fixed(1223, 1186.5);
const t = fixed(1400, 1186.5);
const u = unknown(0);
const degrees = (d: number, minutes = 0) => ((d + minutes / 60) * Math.PI) / 180;
const SIGMA = degrees(30 / 3600);

const observations: Observation[] = [
  tape('RU', r, u, 200, 0.05),
  tape('US', u, s, 100, 0.08),
  { kind: 'angle', id: 'QRU', station: r, backsight: q, foresight: u, value: degrees(240), sigma: SIGMA },
  { kind: 'angle', id: 'RUS', station: u, backsight: r, foresight: s, value: degrees(150), sigma: SIGMA },
  { kind: 'angle', id: 'UST', station: s, backsight: u, foresight: t, value: degrees(240, 1), sigma: SIGMA },
];

it('fits distances and angles to the published point', () => {
  const result = solved({ estimates: [1173, 1100], observations });
  expect(result.status).toBe('converged');
  expect(result.estimates[0]).toBeCloseTo(1173.0886, 4);
  expect(result.estimates[1]).toBeCloseTo(1099.9872, 4);
  const sigma0 = result.sigma0 ?? 0;
  const { xx, xy, yy } = result.covarianceBlock(0);
  expect(sigma0 * Math.sqrt(xx)).toBeCloseTo(0.04194, 5);
  expect(sigma0 * Math.sqrt(yy)).toBeCloseTo(0.05264, 5);
  expect(sigma0).toBeCloseTo(1.818714, 6);
  expect(sigma0 ** 2 * xx).toBeCloseTo(0.00175877, 8);
  expect(sigma0 ** 2 * xy).toBeCloseTo(0.0019912, 8);
  expect(sigma0 ** 2 * yy).toBeCloseTo(0.00277059, 8);
  const ellipse = errorEllipse(result.covarianceBlock(0));
  expect(sigma0 * ellipse.semiMajor).toBeCloseTo(0.06572, 5);
  expect(sigma0 * ellipse.semiMinor).toBeCloseTo(0.0145, 5);
});

it('does not mind whole turns in an observed angle', () => {
  const turned = observations.map((o) => (o.kind === 'angle' ? { ...o, value: o.value - 2 * Math.PI } : o));
  const want = solved({ estimates: [1173, 1100], observations });
  const got = solved({ estimates: [1173, 1100], observations: turned });
  expect(got.estimates[0]).toBeCloseTo(want.estimates[0] ?? 0, 9);
  got.residuals.forEach((v, i) => {
    expect(v).toBeCloseTo(want.residuals[i] ?? 0, 9);
  });
});

it('converges from a start tens of metres off', () => {
  const result = solved({ estimates: [1120, 1160], observations });
  expect(result.status).toBe('converged');
  expect(result.estimates[0]).toBeCloseTo(1173.0886, 4);
});
