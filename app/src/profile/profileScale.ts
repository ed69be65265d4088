import { scaleLinear } from 'd3-scale';

/** How a profile lies in its chart: pixels of a station and of a height, both metres, and where ticks stand. */
export type ProfileScale = {
  readonly x: (station: number) => number;
  readonly y: (height: number) => number;
  readonly stationAt: (x: number) => number;
  /** How many times heights are drawn larger than lengths; 1 when they are true to each other. */
  readonly exaggeration: number;
  readonly pxPerMetre: number;
  readonly stations: readonly number[];
  readonly heights: readonly { readonly height: number; readonly text: string }[];
};

type Chart = {
  /** Length of the pipe, and the lowest and the highest that is shown (m). */
  readonly length: number;
  readonly low: number;
  readonly high: number;
  /** The part of the chart that the pipe is drawn in (px). */
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  /** Metres to the unit that ticks are round in. */
  readonly unit: number;
};

/** Factors that are said easily. */
const FACTORS = [1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 75, 100];

const STATION_TICK_PX = 72;
const HEIGHT_TICK_PX = 34;
/** Less than this (m) is not drawn higher: a level pipe alone would fill the chart with its own diameter. */
const LEAST_HIGH_M = 0.5;

/** The whole pipe over the width, heights enlarged by the largest round factor that fits. A short pipe that lies deep is drawn true. */
export function profileScale({ length, low, high, left, top, width, height, unit }: Chart): ProfileScale {
  const high_ = Math.max(high - low, LEAST_HIGH_M);
  const fitted = width / Math.max(length, unit);
  const exaggeration = FACTORS.findLast((f) => f * fitted * high_ <= height) ?? 1;
  const pxPerMetre = Math.min(fitted, height / high_ / exaggeration);
  const middle = (low + high) / 2;
  const half = height / 2 / (pxPerMetre * exaggeration);
  const x = scaleLinear([0, length / unit], [left, left + length * pxPerMetre]);
  const y = scaleLinear([(middle - half) / unit, (middle + half) / unit], [top + height, top]);
  const heightTicks = Math.max(2, Math.floor(height / HEIGHT_TICK_PX));
  const text = y.tickFormat(heightTicks);
  return {
    x: (station) => x(station / unit),
    y: (at) => y(at / unit),
    stationAt: (px) => Math.min(length, Math.max(0, x.invert(px) * unit)),
    exaggeration,
    pxPerMetre,
    stations: x.ticks(Math.max(2, Math.floor(width / STATION_TICK_PX))).map((s) => s * unit),
    heights: y.ticks(heightTicks).map((h) => ({ height: h * unit, text: text(h) })),
  };
}
