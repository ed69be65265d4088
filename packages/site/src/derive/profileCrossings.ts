import { distance, flattenPath, intersectSegments } from '@footmark/geometry';
import { segmentMeetsBounds } from './bounds';
import type { Derived } from './derive';
import type { DerivedFeature } from './deriveFeatures';
import { type PathProfile, profileAt } from './profileAt';

/** A service or a main that a path crosses in plan. Metres. */
export type ProfileCrossing = {
  readonly feature: string;
  readonly station: number;
  /** Its top, in the profile's heights; null where its depth or the ground there is not known. */
  readonly top: number | null;
  readonly diameter: number;
  /** Between it and the outside of the pipe, in height; negative when they would run into each other; null where not known. */
  readonly clear: number | null;
};

/** A bend's chords may lie this far (m) from it: a crossing is not known better. */
const CROSSING_SAGITTA_M = 0.01;

/** What a path crosses, by station. The depth of a service or a main is taken to its top. */
export function profileCrossings(profile: PathProfile, derived: Derived): readonly ProfileCrossing[] {
  const on = derived.paths.get(profile.path);
  if (on === undefined) return [];
  const line = flattenPath(on.line, CROSSING_SAGITTA_M);
  const found: ProfileCrossing[] = [];
  for (const crossed of derived.features.values()) {
    if (crossed.feature.kind !== 'service' && crossed.feature.kind !== 'main') continue;
    let start = 0;
    for (const [i, a] of line.entries()) {
      const b = line[i + 1];
      if (b === undefined) break;
      const length = distance(a, b);
      if (segmentMeetsBounds(a, b, crossed.bounds)) {
        for (const t of crossingsOf(a, b, crossed)) {
          const crossing = crossingAt(profile, crossed, start + t * length);
          const before = found.at(-1);
          // a crossing at a corner is met by the legs on both sides of it
          const again =
            before?.feature === crossing.feature &&
            Math.abs(before.station - crossing.station) < CROSSING_SAGITTA_M;
          if (!again) found.push(crossing);
        }
      }
      start += length;
    }
  }
  return found.sort((a, b) => a.station - b.station);
}

/** Where, as shares of its length, a segment crosses a line. */
function crossingsOf(
  a: DerivedFeature['points'][number],
  b: DerivedFeature['points'][number],
  { outline }: DerivedFeature,
): readonly number[] {
  return outline.slice(1).flatMap((d, i) => {
    const c = outline[i];
    const meet = c === undefined ? null : intersectSegments(a, b, c, d, 'included');
    return meet?.kind === 'point' ? [meet.t] : [];
  });
}

function crossingAt(profile: PathProfile, { feature }: DerivedFeature, station: number): ProfileCrossing {
  const fields = feature.kind === 'service' || feature.kind === 'main' ? feature.fields : {};
  const { ground, pipe, size } = profileAt(profile, station);
  const diameter = fields.diameter ?? 0;
  const top = ground === null || fields.depth === undefined ? null : ground.level - fields.depth;
  const clear =
    top === null || pipe === null
      ? null
      : Math.max(top - diameter - (pipe.invert + size.diameter + size.wall), pipe.invert - size.wall - top);
  return { feature: feature.id, station, top, diameter, clear };
}
