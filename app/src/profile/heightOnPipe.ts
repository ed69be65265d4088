import { type PathProfile, profileAt } from '@footmark/site';

/** The top of the pipe, outside (m), at a station; null where its depth is not known. */
export function heightOnPipe(profile: PathProfile, station: number): number | null {
  const { pipe, size } = profileAt(profile, station);
  return pipe === null ? null : pipe.invert + size.diameter + size.wall;
}
