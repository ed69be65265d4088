import type { EarthPoint } from '@footmark/site';
import { FOOT_M } from '@footmark/site';
import type { IncomingFinding } from '@footmark/words';
import { earthDistance } from './earthDistance';
import type { IncomingFrame } from './incomingAnswers';
import { toEarth } from './toEarth';

/** Farther from the site (m) nothing is taken; nearer than this but far from a yard is told. */
const TOO_FAR_M = 100_000;
const FAR_M = 1000;

type Middle = readonly [east: number, north: number];

/** Mistakes that put things far away, and the coordinates without each. */
const MISTAKES: readonly {
  readonly code: 'order-swapped' | 'wrong-hemisphere' | 'unit-suspected';
  readonly of: 'both' | 'earth' | 'grid';
  undone(middle: Middle): Middle;
}[] = [
  { code: 'wrong-hemisphere', of: 'earth', undone: ([e, n]) => [-e, n] },
  { code: 'wrong-hemisphere', of: 'earth', undone: ([e, n]) => [e, -n] },
  { code: 'wrong-hemisphere', of: 'earth', undone: ([e, n]) => [-e, -n] },
  { code: 'order-swapped', of: 'both', undone: ([e, n]) => [n, e] },
  { code: 'unit-suspected', of: 'grid', undone: ([e, n]) => [e * FOOT_M, n * FOOT_M] },
  { code: 'unit-suspected', of: 'grid', undone: ([e, n]) => [e / FOOT_M, n / FOOT_M] },
];

/**
 * How far from the site (m) the middle of what came in lies, and what is to be said of it: with the mistake that would explain it, where one brings
 * it near. A distance of null is nowhere on the earth.
 */
export function whereabouts(
  middle: Middle,
  site: EarthPoint,
  frame: IncomingFrame,
): { readonly distance: number | null; readonly findings: readonly IncomingFinding[] } {
  const away = (at: Middle): number | null => {
    const place = toEarth(at, frame);
    return place.ok ? earthDistance(site, place.value) : null;
  };
  const distance = away(middle);
  if (distance !== null && distance <= TOO_FAR_M) {
    const far = distance > FAR_M;
    return { distance, findings: far ? [{ code: 'far-away', severity: 'warning', metres: distance }] : [] };
  }
  for (const { code, of, undone } of MISTAKES) {
    if (of !== 'both' && of !== frame.coordinates.is) continue;
    const without = away(undone(middle));
    if (without === null || without > TOO_FAR_M) continue;
    if (code === 'order-swapped')
      return { distance, findings: [{ code, severity: 'error', metres: distance }] };
    if (distance !== null) return { distance, findings: [{ code, severity: 'error', metres: distance }] };
  }
  return {
    distance,
    findings: distance === null ? [] : [{ code: 'too-far', severity: 'error', metres: distance }],
  };
}
