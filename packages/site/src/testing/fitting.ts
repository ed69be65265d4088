import { derive } from '../derive/derive';
import type { Site } from '../document/site';
import { takeFit } from '../edits/takeFit';
import { fitRuns } from '../fit/fitRuns';
import type { RunsFit } from '../fit/runsFit';
import { pipe, push, ref, thing, typed, yard } from './yard';

/** A straight pipe of 20 m from a cleanout to a manhole, a run from each end. */
export function pushedFromBothEnds(
  parts: Partial<Site> = {},
  locates: readonly [string, string, number, number, object?][] = [],
): Site {
  return {
    ...yard({
      features: [
        thing('co', 'cleanout', [typed(0, 0)]),
        thing('mh', 'manhole', [typed(20, 0)]),
        ...locates.map(([id, reading, x, y, fields]) =>
          thing(id, 'locate', [typed(x, y)], {
            reading: { run: reading.startsWith('b') ? 'b' : 'a', reading },
            method: 'crossed',
            ...fields,
          }),
        ),
      ],
      paths: [
        pipe('p', [
          { by: 'at', point: ref('co') },
          { by: 'finger', x: 10, y: 0.5 },
          { by: 'at', point: ref('mh') },
        ]),
      ],
      runs: [
        push(
          { id: 'a', letter: 'A', entry: 'co', path: 'p' },
          [4, 8, 12].map((counter, i) => ({ id: `a${i + 1}`, counter })),
        ),
        push(
          { id: 'b', letter: 'B', entry: 'mh', path: 'p', direction: 'against-flow' },
          [4, 8, 12].map((counter, i) => ({ id: `b${i + 1}`, counter })),
        ),
      ],
    }),
    ...parts,
  };
}

export function fitOf(of: Site): RunsFit {
  const fit = fitRuns(of, derive(of));
  if (fit === null) throw new Error('nobody stopped it');
  return fit;
}

export function taken(of: Site): Site {
  return takeFit(of, { fit: fitOf(of), places: derive(of).points });
}

export const located = () =>
  pushedFromBothEnds({}, [
    ['l1', 'a1', 4.1, -0.2],
    ['l2', 'a2', 8.15, -0.5],
    ['l3', 'b2', 11.8, -0.4],
  ]);
