import { fail } from '@footmark/geometry';
import type { IncomingNote } from '@footmark/words';
import { plainText } from '../harmless';
import type { IncomingFailure, IncomingPoint, IncomingThing } from './incoming';
import { MOST_NAME_CHARACTERS, MOST_POINTS, MOST_THINGS } from './incomingLimits';

/** Gathers what a reader finds, within the limits. */
export type Collector = {
  /** Puts a thing in, or leaves it out and counts why. False once a limit is passed: the reader stops. */
  add(thing: IncomingThing): boolean;
  leaveOut(code: IncomingNote['code'], count?: number): void;
  readonly things: readonly IncomingThing[];
  readonly notes: readonly IncomingNote[];
  readonly failure: IncomingFailure | null;
};

const FEWEST = { point: 1, line: 2, area: 3 } as const;

export function collector(): Collector {
  const things: IncomingThing[] = [];
  const left = new Map<IncomingNote['code'], number>();
  let points = 0;
  let failure: IncomingFailure | null = null;
  const leaveOut = (code: IncomingNote['code'], count = 1) => {
    if (count > 0) left.set(code, (left.get(code) ?? 0) + count);
  };
  return {
    add(thing) {
      // also those that are left out: what a drawing puts down a million times takes its time in any case
      points += thing.points.length;
      if (points > MOST_POINTS) {
        failure = fail('too-many-points', { most: MOST_POINTS });
        return false;
      }
      if (thing.points.some((p) => !Number.isFinite(p.first) || !Number.isFinite(p.second))) {
        leaveOut('no-number');
        return true;
      }
      const open = thing.shape === 'area' ? opened(thing.points) : thing.points;
      if (open.length < FEWEST[thing.shape]) {
        leaveOut('too-few-points');
        return true;
      }
      if (things.length >= MOST_THINGS) {
        failure = fail('too-many-things', { most: MOST_THINGS });
        return false;
      }
      things.push({ ...thing, name: shortName(thing.name), layer: shortName(thing.layer), points: open });
      return true;
    },
    leaveOut,
    things,
    get notes() {
      return [...left].map(([code, count]) => ({ code, count }));
    },
    get failure() {
      return failure;
    },
  };
}

/** A ring without its first point again at its end. */
function opened(ring: readonly IncomingPoint[]): readonly IncomingPoint[] {
  const [first, last] = [ring[0], ring.at(-1)];
  const closed = ring.length > 1 && first?.first === last?.first && first?.second === last?.second;
  return closed ? ring.slice(0, -1) : ring;
}

/** One line without controls, no longer than a site's names. */
function shortName(text: string): string {
  const line = plainText(text.slice(0, 4 * MOST_NAME_CHARACTERS))
    .replace(/\s+/gu, ' ')
    .trim();
  return line.length <= MOST_NAME_CHARACTERS ? line : [...line].slice(0, MOST_NAME_CHARACTERS / 2).join('');
}
