import { ANSWER_FORMAT, ANSWER_VERSION, type Answer, type FoundReport } from '@footmark/site';

const at = '2026-06-01T14:05:00-05:00';

/** What a crew found at its nth mark. Invented. */
export function crewReport(n: number): FoundReport {
  return {
    id: `w${n}`,
    about: { is: 'mark', run: 'r1', reading: `q${n}` },
    state: 'found',
    by: 'Crew one',
    at,
    given: {
      label: `A${n}`,
      at: { x: 3.25 * n, y: 11.5 },
      flow: 0.1,
      ties: [
        { from: { of: 'f1', at: 'a' }, distance: 7.3152 },
        { from: { of: 'f1', at: 'b' }, distance: 4.1148 },
      ],
      side: 'left',
    },
    where: { by: 'paint', along: 0.1524, right: -0.0762 },
    depth: { to: 'top', depth: 1.3716 },
    seen: 'roots',
    material: 'clay',
    diameter: 0.1016,
    note: 'raíces hasta la unión',
    photos: [],
  };
}

/** What a crew sends back of so many marks. */
export const crewAnswer = (count: number): Answer => ({
  format: ANSWER_FORMAT,
  version: ANSWER_VERSION,
  id: 'a1',
  site: 's1',
  madeFrom: { version: 3, hash: '0123456789abcdef' },
  by: 'Crew one',
  language: 'es',
  sentAt: at,
  ticks: Array.from({ length: count }, (_, i) => ({
    about: { is: 'mark', run: 'r1', reading: `q${i + 1}` } as const,
    state: 'dug' as const,
    at,
  })),
  found: Array.from({ length: count }, (_, i) => crewReport(i + 1)),
});
