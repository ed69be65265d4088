import type { Answer } from '../document/answer';
import { ANSWER_FORMAT, ANSWER_VERSION } from '../document/answer';
import type { AsFound, FoundReport } from '../document/asFound';
import type { Path } from '../document/path';
import type { Site } from '../document/site';
import { pipe, push, ref, square, thing, typed, yard } from './yard';

/**
 * A pipe that runs east from a cleanout at the origin to a manhole at (20, 0), marks A1 to A3 at 4, 10 and 16 m, and two poles at
 * (0, 3) and (8, 3): the mark at (4, 0) is 5 m from each of their points, a right triangle of 3, 4 and 5.
 */
export function foundYard(asFound: readonly AsFound[] = [], path: Partial<Path> = {}): Site {
  const site = yard({
    features: [
      thing('co', 'cleanout', [typed(0, 0)]),
      thing('mh', 'manhole', [typed(20, 0)]),
      thing('p1', 'pole', [typed(0, 3)]),
      thing('p2', 'pole', [typed(8, 3)]),
      thing('t1', 'tree', [typed(4, 4)], { trunkDiameter: 0.4 }),
      square('house', 'building', -12, 2, 8),
    ],
    paths: [pipe('p', [{ by: 'at', point: ref('co') }, typed(10, 0), { by: 'at', point: ref('mh') }], path)],
    runs: [push({ entry: 'co', path: 'p' }, [4, 10, 16])],
  });
  return { ...site, asFound: [...asFound] };
}

/** What the crew was given for the mark at (4, 0). The line from pole to pole runs east: the mark is right of it. */
export const given = {
  label: 'A1',
  at: { x: 4, y: 0 },
  flow: Math.PI / 2,
  ties: [
    { from: ref('p1'), distance: 5 },
    { from: ref('p2'), distance: 5 },
  ],
  side: 'right' as const,
};

/** A find at the first mark, in noon's light. */
export function find(parts: Partial<FoundReport> & { readonly id: string }): FoundReport {
  return {
    about: { is: 'mark', run: 'run', reading: 'r1' },
    state: 'found',
    by: 'Crew one',
    at: '2026-05-20T12:00:00-05:00',
    note: '',
    photos: [],
    ...parts,
  };
}

export function answerOf(parts: Partial<Answer> = {}): Answer {
  return {
    format: ANSWER_FORMAT,
    version: ANSWER_VERSION,
    id: 'answer1',
    site: 'yard',
    madeFrom: { version: 3, hash: '0123456789abcdef' },
    by: 'Crew one',
    language: 'en',
    sentAt: '2026-05-20T17:00:00-05:00',
    ticks: [],
    found: [],
    ...parts,
  };
}
