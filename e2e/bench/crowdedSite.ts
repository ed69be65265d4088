import { type Feature, newSite, type Site } from '../../packages/site/src/index';

/** Side of the square that the yard fills, in metres; an outline stands on its edge, so that a fitted view shows just it. */
const SIDE_M = 120;

/** No thing comes nearer than this to the middle, so that what is to be dragged can be grasped there. */
const BARE_M = 4;

/** What is dragged: the one thing in the middle of the yard. */
export const IN_THE_MIDDLE = 'Shed in the middle';

/** Uniform in [0, 1), the same for a seed everywhere (Park and Miller's generator). */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

type Spot = Feature['vertices'][number]['spot'];

const LETTERS = 'abcdefgh';

/**
 * A yard of so many named features: a third taped trees, the rest fences, service lines, decks, poles and cleanouts by coordinates,
 * all within the boundary's square, and in its middle a shed that was put there by eye.
 */
export function crowdedSite(features: number, seed: number): Site {
  const next = seeded(seed);
  const middle = SIDE_M / 2;
  const spots = (...places: readonly (readonly [number, number])[]) =>
    places.map(([x, y], i) => ({ id: LETTERS[i] ?? 'z', spot: { by: 'coordinates', x, y } as Spot }));
  const made: Feature[] = [
    {
      id: 'edge',
      kind: 'boundary',
      name: 'Boundary',
      fields: {},
      vertices: spots([0, 0], [0, SIDE_M], [SIDE_M, SIDE_M], [SIDE_M, 0]),
    },
    {
      id: 'middle',
      kind: 'shed',
      name: IN_THE_MIDDLE,
      fields: {},
      vertices: [
        [-1.5, -1],
        [1.5, -1],
        [1.5, 1],
        [-1.5, 1],
      ].map(([dx = 0, dy = 0], i) => ({
        id: LETTERS[i] ?? 'z',
        spot: { by: 'finger', x: middle + dx, y: middle + dy },
      })),
    },
  ];
  while (made.length < features) {
    const [x, y] = [6 + next() * (SIDE_M - 12), 6 + next() * (SIDE_M - 12)];
    if (Math.abs(x - middle) < BARE_M + 5 && Math.abs(y - middle) < BARE_M + 3) continue;
    made.push(thing(made.length, x, y, next(), spots));
  }
  return {
    ...newSite({
      id: 'crowded',
      name: `Crowded yard of ${features}`,
      createdAt: '2026-01-02T03:04:05Z',
      units: { length: 'ft-in', diameter: 'in', direction: 'bearing' },
    }),
    features: made,
  };
}

function thing(
  n: number,
  x: number,
  y: number,
  share: number,
  spots: (...places: readonly (readonly [number, number])[]) => Feature['vertices'],
): Feature {
  const id = `f${n}`;
  switch (n % 6) {
    case 0:
    case 3: {
      const taped = (at: string, atX: number, atY: number) => ({
        from: { of: 'edge', at },
        distance: Math.hypot(x - atX, y - atY),
      });
      const tapes = [taped('a', 0, 0), taped('b', 0, SIDE_M), taped('c', SIDE_M, SIDE_M)];
      return {
        id,
        kind: 'tree',
        name: `Tree ${n}`,
        fields: { trunkDiameter: 0.2 + share },
        vertices: [
          { id: 'a', spot: { by: 'tapes', side: 'right', tapes: tapes.slice(0, n % 4 === 0 ? 3 : 2) } },
        ],
      };
    }
    case 1:
      return {
        id,
        kind: 'fence',
        name: `Fence ${n}`,
        fields: {},
        vertices: spots([x, y], [x + 3, y + 1], [x + 5, y]),
      };
    case 2:
      return {
        id,
        kind: 'service',
        name: `Service line ${n}`,
        fields: { carries: share < 0.5 ? 'gas' : 'water' },
        vertices: spots([x, y], [x - 5, y + 2 + share]),
      };
    case 4:
      return {
        id,
        kind: 'deck',
        name: `Deck ${n}`,
        fields: {},
        vertices: spots([x, y], [x + 2, y], [x + 2, y + 2], [x, y + 2]),
      };
    default:
      return share < 0.5
        ? { id, kind: 'pole', name: `Pole ${n}`, fields: { diameter: 0.3 }, vertices: spots([x, y]) }
        : { id, kind: 'cleanout', name: `Cleanout ${n}`, fields: {}, vertices: spots([x, y]) };
  }
}
