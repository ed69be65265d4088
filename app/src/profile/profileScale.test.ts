import { describe, expect, it } from 'vitest';
import { profileScale } from './profileScale';

const chart = { left: 40, top: 20, width: 800, height: 120, unit: 1, low: 95, high: 97 };

describe('profileScale', () => {
  it('lays the whole pipe over the width and enlarges heights by what it says', () => {
    const scale = profileScale({ ...chart, length: 80 });
    expect(scale.x(0)).toBe(40);
    expect(scale.x(80)).toBe(840);
    // 10 px a metre along; 2 m in 120 px leave room for 60 px a metre
    expect(scale.exaggeration).toBe(6);
    expect((scale.y(95) - scale.y(97)) / 2 / scale.pxPerMetre).toBeCloseTo(6, 9);
    expect(scale.y(97)).toBeCloseTo(20, 9);
    expect(scale.y(95)).toBeCloseTo(140, 9);
  });

  it('puts what is left over above and below alike', () => {
    const scale = profileScale({ ...chart, length: 70 });
    expect(scale.exaggeration).toBe(5);
    expect(scale.y(97) - 20).toBeCloseTo(140 - scale.y(95), 9);
  });

  it('draws a short pipe that lies deep true to scale, in part of the width', () => {
    const scale = profileScale({ ...chart, length: 2 });
    expect(scale.exaggeration).toBe(1);
    expect(scale.pxPerMetre).toBe(60);
    expect(scale.x(2)).toBe(160);
  });

  it('has round ticks in the unit that is asked for', () => {
    const scale = profileScale({
      ...chart,
      length: 80 * 0.3048,
      unit: 0.3048,
      low: 95 * 0.3048,
      high: 97 * 0.3048,
    });
    expect(scale.stations.map((s) => Math.round(s / 0.3048))).toEqual([0, 10, 20, 30, 40, 50, 60, 70, 80]);
    expect(scale.heights.map((h) => h.text)).toEqual(['95.0', '95.5', '96.0', '96.5', '97.0']);
  });

  it('finds the station under a pixel, within the pipe', () => {
    const scale = profileScale({ ...chart, length: 80 });
    expect(scale.stationAt(440)).toBeCloseTo(40, 9);
    expect(scale.stationAt(0)).toBe(0);
    expect(scale.stationAt(2000)).toBe(80);
  });

  it('shows a pipe of which only one height is known', () => {
    const scale = profileScale({ ...chart, length: 80, low: 95, high: 95 });
    expect(Number.isFinite(scale.y(95))).toBe(true);
    expect(scale.y(95)).toBeCloseTo(80, 9);
  });
});
