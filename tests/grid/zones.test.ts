import { degrees } from '@footmark/geometry';
import {
  earthToGrid,
  type GeoBox,
  type GridSystem,
  gridFactors,
  gridToEarth,
  openGrid,
  statePlaneZones,
} from '@footmark/grid';
import type { EarthPoint } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { isThere, linesFrom } from '../debian/programs';
import { seededRandom } from '../random/seeded';

const zones = await statePlaneZones();

const MILLIMETRE = 0.001;
const POINTS = 12;

function opened(system: GridSystem) {
  const grid = openGrid(system);
  if (!grid.ok) throw new Error(`${system.epsg}: ${grid.code}`);
  return grid.value;
}

function pointsIn({ westDeg, eastDeg, southDeg, northDeg }: GeoBox, seed: number): readonly EarthPoint[] {
  const next = seededRandom(seed);
  const width = (eastDeg - westDeg + 360) % 360;
  return Array.from({ length: POINTS }, () => ({
    longitudeDeg: ((westDeg + width * next() + 540) % 360) - 180,
    latitudeDeg: southDeg + (northDeg - southDeg) * next(),
  }));
}

const lonLat = (p: EarthPoint) => `${p.longitudeDeg} ${p.latitudeDeg}`;

describe('every State Plane system', () => {
  it('leads back to where it came from, within 0.01 mm', () => {
    for (const [i, { area, systems }] of zones.entries()) {
      for (const system of systems) {
        const grid = opened(system);
        for (const p of pointsIn(area, i)) {
          const at = earthToGrid(grid, p);
          if (!at.ok) return expect.fail(`${system.name}: ${at.code}`);
          const back = gridToEarth(grid, at.value);
          if (!back.ok) return expect.fail(`${system.name}: ${back.code}`);
          expect(Math.abs(back.value.latitudeDeg - p.latitudeDeg)).toBeLessThan(1e-10);
          expect(Math.abs(back.value.longitudeDeg - p.longitudeDeg)).toBeLessThan(1e-10);
        }
      }
    }
  });

  // Reference: cs2cs of PROJ (Debian proj-bin) with its own register, from NAD 83 to the code. Its output is in the system's unit.
  it.skipIf(!isThere('cs2cs'))('is where PROJ has it, within 1 mm', { timeout: 120_000 }, () => {
    let worst = 0;
    for (const [i, { area, systems }] of zones.entries()) {
      const points = pointsIn(area, i);
      // a system of 2011 has its namesake's definition, letter by letter
      const different = new Map(systems.toReversed().map((system) => [system.definition, system]));
      for (const system of different.values()) {
        const grid = opened(system);
        const from = system.datum === 'NAD83' ? 'EPSG:4269' : 'EPSG:6318';
        const args = ['-d', '6', from, `EPSG:${system.epsg}`];
        const lines = linesFrom(
          'cs2cs',
          args,
          points.map((p) => `${p.latitudeDeg} ${p.longitudeDeg}`),
        );
        for (const [k, p] of points.entries()) {
          const [x = Number.NaN, y = Number.NaN] = (lines[k] ?? '').split(/\s+/).map(Number);
          const at = earthToGrid(grid, p);
          if (!at.ok) return expect.fail(at.code);
          const off = Math.hypot(at.value.easting - x, at.value.northing - y) * system.unit.metres;
          if (!(off < MILLIMETRE))
            expect.fail(`${system.epsg} ${system.name} at ${lonLat(p)} is ${off} m off: ${lines[k]}`);
          worst = Math.max(worst, off);
        }
      }
    }
    expect(worst).toBeLessThan(MILLIMETRE);
  });

  // Reference: the factors that PROJ prints (`proj -V`), to eight decimals
  it.skipIf(!isThere('proj'))('has the scale and the convergence that PROJ has', { timeout: 120_000 }, () => {
    for (const [i, { area, systems }] of zones.entries()) {
      const [system] = systems;
      if (system === undefined) return expect.fail('a zone without a system');
      const points = pointsIn(area, i);
      const args = system.definition.split(' ').filter((part) => !part.startsWith('+towgs84'));
      const lines = linesFrom('proj', ['-V', ...args], points.map(lonLat)).join('\n');
      const scales = [...lines.matchAll(/Meridian scale \(h\) *: ([\d.]+)/g)].map((m) => Number(m[1]));
      const angles = [...lines.matchAll(/^Convergence *: .*\[ ([-+\d.e]+)/gm)].map((m) => Number(m[1]));
      expect(scales.length).toBe(POINTS);
      for (const [k, p] of points.entries()) {
        const factors = gridFactors(opened(system), p, null);
        if (!factors.ok) return expect.fail(factors.code);
        expect(factors.value.conformal).toBe(true);
        expect(Math.abs(factors.value.pointScale - (scales[k] ?? Number.NaN))).toBeLessThan(2e-8);
        expect(Math.abs(degrees(factors.value.convergence) - (angles[k] ?? Number.NaN))).toBeLessThan(2e-7);
      }
    }
  });
});
