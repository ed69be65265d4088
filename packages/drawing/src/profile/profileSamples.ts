import { type PathProfile, type ProfileAt, profileAt } from '@footmark/site';

/** Pieces that a profile is divided into at least, so that ranges that grow in a curve are drawn as one. */
const EVEN_PIECES = 48;

/** A building's wall is looked at from both sides, this far (m) away. */
const BESIDE_WALL_M = 1e-6;

/** A profile at enough stations to be drawn by straight lines between them: at every change, on both sides of drops and walls. */
export function profileSamples(profile: PathProfile): readonly ProfileAt[] {
  const { length, line, ground } = profile;
  const stations = new Set<number>([
    ...Array.from({ length: EVEN_PIECES + 1 }, (_, i) => (i / EVEN_PIECES) * length),
    ...line.grades.map((g) => g.station),
    ...line.drops.map((d) => d.station),
    ...line.stretches.map((s) => s.from),
    ...ground.marks.map((m) => m.station),
    ...ground.indoors.flatMap(({ from, to }) => [from, from + BESIDE_WALL_M, to - BESIDE_WALL_M, to]),
  ]);
  const ordered = [...stations].filter((s) => s >= 0 && s <= length).sort((a, b) => a - b);
  const steps = new Set(line.drops.map((d) => d.station));
  return ordered.flatMap((station) =>
    steps.has(station)
      ? [profileAt(profile, station, 'before'), profileAt(profile, station)]
      : [profileAt(profile, station)],
  );
}
