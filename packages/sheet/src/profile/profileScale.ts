import { scaleLinear } from 'd3-scale';

/** Where stations and heights (m) come on paper, and where they are ruled. */
export type ProfileScale = Readonly<{
  x: (station: number) => number;
  y: (height: number) => number;
  /** How many times heights are drawn larger than lengths. */
  exaggeration: number;
  stations: readonly number[];
  heights: readonly Readonly<{ height: number; text: string }>[];
}>;

/** Factors that are said easily. */
const FACTORS = [1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 75, 100];
const STATION_MM = 18;
const HEIGHT_MM = 8;
/** Less than this (m) is not drawn higher: a level pipe alone would fill the strip with its own diameter. */
const LEAST_HIGH_M = 0.5;

type Strip = Readonly<{
  length: number;
  low: number;
  high: number;
  /** The part of the strip that the pipe is drawn in, mm. */
  left: number;
  top: number;
  width: number;
  height: number;
  /** Metres to the unit that ticks are round in. */
  unit: number;
}>;

/** The whole pipe over the width, heights enlarged by the largest round factor that fits. */
export function profileScale({ length, low, high, left, top, width, height, unit }: Strip): ProfileScale {
  const high_ = Math.max(high - low, LEAST_HIGH_M);
  const fitted = width / Math.max(length, unit);
  const exaggeration = FACTORS.findLast((f) => f * fitted * high_ <= height) ?? 1;
  const mmPerMetre = Math.min(fitted, height / high_ / exaggeration);
  const middle = (low + high) / 2;
  const half = height / 2 / (mmPerMetre * exaggeration);
  const x = scaleLinear([0, length / unit], [left, left + length * mmPerMetre]);
  const y = scaleLinear([(middle - half) / unit, (middle + half) / unit], [top + height, top]);
  const ticks = Math.max(2, Math.floor(height / HEIGHT_MM));
  const text = y.tickFormat(ticks);
  return {
    x: (station) => x(station / unit),
    y: (at) => y(at / unit),
    exaggeration,
    stations: x.ticks(Math.max(2, Math.floor(width / STATION_MM))).map((s) => s * unit),
    heights: y.ticks(ticks).map((h) => ({ height: h * unit, text: text(h) })),
  };
}
