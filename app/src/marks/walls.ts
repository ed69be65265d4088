/** The four directions that a crew names without a compass, as azimuths (rad). */
export const WALLS = { north: 0, east: Math.PI / 2, south: Math.PI, west: (3 * Math.PI) / 2 } as const;
