import { drawProfile, type ProfileDrawing } from '@footmark/drawing';
import {
  type Derived,
  FOOT_M,
  type PathProfile,
  type ProfileCrossing,
  profileCrossings,
  type Units,
} from '@footmark/site';
import { type ProfileScale, profileScale } from './profileScale';

/** Room in a chart around the pipe (px): heights at the left, mark labels above, stations below. */
export type Margin = {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
};

const MARGIN: Margin = { left: 52, right: 16, top: 44, bottom: 24 };
/** In a low chart there is one row of labels, and the pipe goes without letters. */
const LOW_PX = 140;
const LOW_MARGIN: Margin = { ...MARGIN, top: 26, bottom: 22 };

/** Share of what is shown left bare above and below. */
const AIR = 0.06;
const LEAST_HEIGHT_PX = 24;

/** What is drawn of a profile, and the scales for it. */
export type ChartLayout = {
  readonly drawing: ProfileDrawing;
  readonly scale: ProfileScale;
  readonly crossings: readonly ProfileCrossing[];
  readonly margin: Margin;
  readonly isLow: boolean;
};

/** Null where nothing is known of the pipe's depth and the ground. */
export function chartLayout(
  profile: PathProfile,
  derived: Derived,
  units: Units,
  size: { readonly width: number; readonly height: number },
): ChartLayout | null {
  const drawing = drawProfile(profile);
  if (drawing.heights === null) return null;
  const crossings = profileCrossings(profile, derived).filter((c) => c.top !== null);
  const edges = crossings.flatMap((c) => [c.top ?? 0, (c.top ?? 0) - c.diameter]);
  const [low, high] = [Math.min(drawing.heights.low, ...edges), Math.max(drawing.heights.high, ...edges)];
  const air = AIR * (high - low);
  const isLow = size.height < LOW_PX;
  const margin = isLow ? LOW_MARGIN : MARGIN;
  return {
    drawing,
    crossings,
    margin,
    isLow,
    scale: profileScale({
      length: profile.length,
      low: low - air,
      high: high + air,
      left: margin.left,
      top: margin.top,
      width: Math.max(1, size.width - margin.left - margin.right),
      height: Math.max(LEAST_HEIGHT_PX, size.height - margin.top - margin.bottom),
      unit: units.length === 'm' ? 1 : FOOT_M,
    }),
  };
}

/** A text above the chart: its row from below, or null where there is no room for it. */
export type PlacedTag = { readonly index: number; readonly row: number | null };

type Taken = { readonly row: number; readonly from: number; readonly to: number };

/**
 * Rows for texts at places along the chart, in `order` of who comes first: the lowest row in which it touches no other and nothing
 * that is `there` already. One that fits in no row is left out.
 */
export function tagRows(
  tags: readonly { readonly x: number; readonly width: number }[],
  rows: number,
  order: readonly number[],
  there: readonly Taken[] = [],
): readonly PlacedTag[] {
  const taken: Taken[] = [...there];
  const placed = order.map((index): PlacedTag => {
    const { x = 0, width = 0 } = tags[index] ?? {};
    const [from, to] = [x - width / 2, x + width / 2];
    for (let row = 0; row < rows; row++) {
      if (taken.some((t) => t.row === row && t.from < to && t.to > from)) continue;
      taken.push({ row, from, to });
      return { index, row };
    }
    return { index, row: null };
  });
  return placed.toSorted((a, b) => a.index - b.index);
}
