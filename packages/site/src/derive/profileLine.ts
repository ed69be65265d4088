import type { Stretch } from '../document/path';
import { profileRules } from '../rules/profileRules';
import { heightBetween, type ProfileDrop, type ProfilePoint } from './profilePoints';
import type { Pool } from './profileSags';

/**
 * The invert at a station (m). `point`: known there; `between`: on the straight line between two known places; `sag`: from how deep
 * the water stood; `beyond`: past the last known place, at the slope that was said of the stretches.
 */
export type InvertAt = {
  readonly invert: number;
  readonly sigma: number;
  readonly by: 'point' | 'between' | 'sag' | 'beyond';
};

/** A pool with the level of its water (m). `shapes`: the pipe's line follows it; of pools that overlap the first does. */
export type Sag = Pool & { readonly level: number; readonly sigma: number; readonly shapes: boolean };

/** A place at which the line of a pipe may change its grade (m). */
export type GradePoint = {
  readonly station: number;
  readonly invert: number;
  readonly sigma: number;
  readonly by: 'point' | 'sag';
};

/** The line of a pipe in elevation: straight between grade points, by station, with steps at the drops. */
export type ProfileLine = {
  readonly grades: readonly GradePoint[];
  readonly drops: readonly ProfileDrop[];
  readonly stretches: readonly Stretch[];
};

/** Below this (m) a station is that of a grade point. */
const AT_POINT_M = 1e-6;

export function lineThrough(
  points: readonly ProfilePoint[],
  drops: readonly ProfileDrop[],
  stretches: readonly Stretch[],
): ProfileLine {
  const grades = points.map(({ station, invert, sigma }) => ({
    station,
    invert,
    sigma,
    by: 'point' as const,
  }));
  return { grades, drops, stretches };
}

/** The invert at a station, below a drop that is there; `before`: above it. Null where no level of the pipe is known at all. */
export function invertAt(
  line: ProfileLine,
  station: number,
  side: 'before' | 'after' = 'after',
): InvertAt | null {
  const below = gradeAt(line, station);
  if (below === null || side === 'after') return below;
  const step = line.drops.reduce((sum, d) => (d.station === station ? sum + d.height : sum), 0);
  return step === 0 ? below : { ...below, invert: below.invert + step };
}

/** The errors of the two ends of a piece are independent: σ² = (1−t)²σ₁² + t²σ₂². */
function gradeAt({ grades, drops, stretches }: ProfileLine, station: number): InvertAt | null {
  const [first, last] = [grades[0], grades.at(-1)];
  if (first === undefined || last === undefined) return null;
  if (station < first.station - AT_POINT_M) return beyond(first, station, drops, stretches);
  if (station > last.station + AT_POINT_M) return beyond(last, station, drops, stretches);
  const next = grades.findIndex((p) => p.station >= station - AT_POINT_M);
  const [a, b] = [grades[next - 1], grades[next] ?? last];
  if (a === undefined || Math.abs(b.station - station) <= AT_POINT_M)
    return { invert: b.invert, sigma: b.sigma, by: b.by };
  const t = (station - a.station) / (b.station - a.station);
  const fall = a.invert - b.invert - heightBetween(drops, a.station, b.station);
  return {
    invert: a.invert - t * fall - heightBetween(drops, a.station, station),
    sigma: Math.hypot((1 - t) * a.sigma, t * b.sigma),
    by: a.by === 'sag' && b.by === 'sag' ? 'sag' : 'between',
  };
}

function beyond(
  from: GradePoint,
  station: number,
  drops: readonly ProfileDrop[],
  stretches: readonly Stretch[],
): InvertAt {
  const [low, high] = [Math.min(from.station, station), Math.max(from.station, station)];
  const fall = fallBetween(stretches, low, high) + heightBetween(drops, low, high);
  return {
    invert: station < from.station ? from.invert + fall : from.invert - fall,
    sigma: Math.hypot(from.sigma, profileRules.assumedSlope.value * (high - low)),
    by: 'beyond',
  };
}

/** What the slopes that were said of the stretches come to (m). */
function fallBetween(stretches: readonly Stretch[], from: number, to: number): number {
  return stretches.reduce((sum, stretch, i) => {
    const end = Math.min(to, stretches[i + 1]?.from ?? Infinity);
    return sum + stretch.slope * Math.max(0, end - Math.max(from, stretch.from));
  }, 0);
}

/**
 * The level of each pool: that of the pipe at its lower end, where the water runs over, and the water's depth there. None where no
 * level of the pipe is known.
 */
export function sagsOf(line: ProfileLine, pools: readonly Pool[]): readonly Sag[] {
  const sags: Sag[] = [];
  for (const pool of pools) {
    const span = spanOf(pool);
    const lip = gradeAt(line, span.to);
    if (lip === null) continue;
    const last = pool.depths.at(-1);
    const overlaps = sags.map(spanOf).some((s) => s.from < span.to && s.to > span.from);
    sags.push({
      ...pool,
      level: lip.invert + (last?.depth ?? 0),
      sigma: Math.hypot(lip.sigma, last?.sigma ?? 0),
      shapes: !overlaps && span.to > span.from,
    });
  }
  return sags;
}

/** The line with its sags: below the water by the water's depth, and up to a sag straight from the known place before it. */
export function withSags(line: ProfileLine, sags: readonly Sag[]): ProfileLine {
  const shaping = sags.filter((sag) => sag.shapes);
  if (shaping.length === 0) return line;
  const kept = line.grades.filter(({ station }) =>
    shaping.map(spanOf).every((s) => station < s.from - AT_POINT_M || station > s.to + AT_POINT_M),
  );
  const dips = shaping.flatMap(({ depths, level, sigma }) =>
    depths.map((d) => ({
      station: d.station,
      invert: level - d.depth,
      sigma: Math.hypot(sigma, d.sigma),
      by: 'sag' as const,
    })),
  );
  return { ...line, grades: [...kept, ...dips].sort((a, b) => a.station - b.station) };
}

export function spanOf({ depths }: Pool): { readonly from: number; readonly to: number } {
  return { from: depths[0]?.station ?? 0, to: depths.at(-1)?.station ?? 0 };
}
