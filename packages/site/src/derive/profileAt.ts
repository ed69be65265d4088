import { type GroundAt, type GroundLine, groundAt } from './profileGround';
import { type InvertAt, invertAt, type ProfileLine, type Sag } from './profileLine';
import type { ProfileDrop, ProfilePoint } from './profilePoints';
import type { ProfileSlope } from './profileSlopes';
import { type PipeSize, pipeSizeAt, type Sounding } from './profileSoundings';

/** A path in elevation, over its stations (plan metres). */
export type PathProfile = {
  readonly path: string;
  readonly length: number;
  /** `below-ground`: no level is known, so that heights are depths below a ground that is taken as even, and slopes mean nothing. */
  readonly heights: 'levels' | 'below-ground';
  readonly ground: GroundLine;
  /** Where the invert is known, by station. */
  readonly points: readonly ProfilePoint[];
  /** Those that the line is drawn through. */
  readonly firm: readonly ProfilePoint[];
  readonly drops: readonly ProfileDrop[];
  readonly line: ProfileLine;
  readonly sags: readonly Sag[];
  /** Depths that nothing is made of: no level of the ground there is known. */
  readonly unused: readonly Sounding[];
  /** Between neighbouring firm points; none of heights below ground. */
  readonly slopes: readonly ProfileSlope[];
  /** From the first point to the last. */
  readonly whole: ProfileSlope | null;
};

/** What a profile says of one station (m). */
export type ProfileAt = {
  readonly station: number;
  readonly ground: GroundAt | null;
  readonly pipe: InvertAt | null;
  readonly size: PipeSize;
  /** From the ground to the invert. */
  readonly depth: DepthAt | null;
  /** From the ground to the top of the pipe, outside. */
  readonly cover: DepthAt | null;
};

/** How far something lies below the ground (m). */
export type DepthAt = { readonly depth: number; readonly sigma: number };

export function profileAt(
  profile: PathProfile,
  station: number,
  side: 'before' | 'after' = 'after',
): ProfileAt {
  const ground = groundAt(profile.ground, station);
  const pipe = invertAt(profile.line, station, side);
  const size = pipeSizeAt(profile.line.stretches, station);
  const depth =
    ground === null || pipe === null
      ? null
      : { depth: ground.level - pipe.invert, sigma: Math.hypot(ground.sigma, pipe.sigma) };
  const cover = depth === null ? null : { ...depth, depth: depth.depth - size.diameter - size.wall };
  return { station, ground, pipe, size, depth, cover };
}
