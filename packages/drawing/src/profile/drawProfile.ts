import { type PathProfile, type ProfileAt, WITHIN_95 } from '@footmark/site';
import { PEN } from '../lineTypes';
import type { Fill, LinePrimitive, Stroke } from '../primitive';
import { profileSamples } from './profileSamples';

const GROUND: Stroke = { ink: 'ink', weight: PEN.medium };
const GROUND_HELD: Stroke = { ink: 'assumed', weight: PEN.fine, dash: [2.2, 1.1] };
const INVERT: Stroke = { ink: 'sewer', weight: PEN.heavy };
const TOP: Stroke = { ink: 'sewer', weight: PEN.fine };
const ASSUMED = [3.6, 1.5] as const;
const BORE: Fill = { ink: 'sewer', opacity: 0.16 };
const UNSURE: Fill = { ink: 'sewer', opacity: 0.12 };
const WATER: Fill = { ink: 'water', opacity: 0.4 };
/** Broad: a few centimetres of water would not be seen at a yard's scale. */
const WATER_TOP: Stroke = { ink: 'water', weight: PEN.broad };
const ERROR_BAR: Stroke = { ink: 'sewer', weight: PEN.fine };

/** A pipe in elevation, as lines and fills. */
export type ProfileDrawing = {
  /** In the order in which they are painted. x is the station and y the height, both metres; the renderer has a scale for each. */
  readonly lines: readonly LinePrimitive[];
  /** Lowest and highest of all that is drawn (m); null when nothing is known of the pipe or the ground. */
  readonly heights: { readonly low: number; readonly high: number } | null;
};

/**
 * Draws the ground, the pipe with the range of its invert (95 %), the water in its sags, and each known invert with its own range.
 * What is only assumed is dashed.
 */
export function drawProfile(profile: PathProfile): ProfileDrawing {
  const samples = profileSamples(profile);
  const lines = [
    ...rangeOf(samples),
    ...boreOf(samples),
    ...topOf(samples),
    ...invertOf(samples),
    ...waterOf(profile),
    ...groundOf(profile, samples),
    ...knownOf(profile),
  ];
  const heights = lines.flatMap((line) => line.points.map((p) => p.y));
  return {
    lines,
    heights: heights.length === 0 ? null : { low: Math.min(...heights), high: Math.max(...heights) },
  };
}

const line = (points: LinePrimitive['points'], stroke: Stroke): LinePrimitive => ({
  kind: 'line',
  points,
  closed: false,
  stroke,
});

type WithPipe = ProfileAt & { readonly pipe: NonNullable<ProfileAt['pipe']> };

function withPipe(samples: readonly ProfileAt[]): readonly WithPipe[] {
  return samples.filter((s): s is WithPipe => s.pipe !== null);
}

function rangeOf(samples: readonly ProfileAt[]): readonly LinePrimitive[] {
  const known = withPipe(samples);
  if (known.length < 2) return [];
  const edge = (side: number) =>
    known.map(({ station, pipe }) => ({ x: station, y: pipe.invert + side * WITHIN_95 * pipe.sigma }));
  return [{ kind: 'line', points: [...edge(1), ...edge(-1).toReversed()], closed: true, fill: UNSURE }];
}

function boreOf(samples: readonly ProfileAt[]): readonly LinePrimitive[] {
  const known = withPipe(samples);
  if (known.length < 2) return [];
  const invert = known.map(({ station, pipe }) => ({ x: station, y: pipe.invert }));
  const crown = known.map(({ station, pipe, size }) => ({ x: station, y: pipe.invert + size.diameter }));
  return [{ kind: 'line', points: [...invert, ...crown.toReversed()], closed: true, fill: BORE }];
}

function topOf(samples: readonly ProfileAt[]): readonly LinePrimitive[] {
  return pieces(withPipe(samples), isAssumed).map(({ of, alike }) =>
    line(
      of.map(({ station, pipe, size }) => ({ x: station, y: pipe.invert + size.diameter + size.wall })),
      alike ? { ...TOP, dash: ASSUMED } : TOP,
    ),
  );
}

function invertOf(samples: readonly ProfileAt[]): readonly LinePrimitive[] {
  return pieces(withPipe(samples), isAssumed).map(({ of, alike }) =>
    line(
      of.map(({ station, pipe }) => ({ x: station, y: pipe.invert })),
      alike ? { ...INVERT, dash: ASSUMED } : INVERT,
    ),
  );
}

const isAssumed = ({ pipe }: WithPipe) => pipe.by === 'beyond';

function groundOf({ ground }: PathProfile, samples: readonly ProfileAt[]): readonly LinePrimitive[] {
  const runs: ProfileAt[][] = [];
  for (const [i, sample] of samples.entries()) {
    if (sample.ground === null) continue;
    if (samples[i - 1]?.ground == null) runs.push([]);
    runs.at(-1)?.push(sample);
  }
  return runs.flatMap((run) =>
    pieces(run, (s) => ground.even || s.ground?.between !== true).map(({ of, alike }) =>
      line(
        of.map((s) => ({ x: s.station, y: s.ground?.level ?? 0 })),
        alike ? GROUND_HELD : GROUND,
      ),
    ),
  );
}

function waterOf({ sags }: PathProfile): readonly LinePrimitive[] {
  return sags.flatMap(({ depths, level }): readonly LinePrimitive[] => {
    const [first, last] = [depths[0], depths.at(-1)];
    if (first === undefined || last === undefined || depths.length < 2) return [];
    const bottom = depths.map((d) => ({ x: d.station, y: level - d.depth }));
    const top = [
      { x: first.station, y: level },
      { x: last.station, y: level },
    ];
    return [
      { kind: 'line', points: [...bottom, ...top.toReversed()], closed: true, fill: WATER },
      line(top, WATER_TOP),
    ];
  });
}

/** How far each measured invert may be off. */
function knownOf({ points }: PathProfile): readonly LinePrimitive[] {
  return points.map(({ station, invert, sigma }) =>
    line(
      [
        { x: station, y: invert - WITHIN_95 * sigma },
        { x: station, y: invert + WITHIN_95 * sigma },
      ],
      ERROR_BAR,
    ),
  );
}

/** Neighbours that are alike, each piece up to and with the first of the next: lines have no gaps between them. */
function pieces<Sample>(
  samples: readonly Sample[],
  isSo: (sample: Sample) => boolean,
): readonly { readonly of: readonly Sample[]; readonly alike: boolean }[] {
  const found: { of: Sample[]; alike: boolean }[] = [];
  for (const [i, a] of samples.entries()) {
    const b = samples[i + 1];
    if (b === undefined) break;
    const alike = isSo(a) || isSo(b);
    const last = found.at(-1);
    if (last?.alike === alike) last.of.push(b);
    else found.push({ of: [a, b], alike });
  }
  return found;
}
