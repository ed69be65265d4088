import { FOOT_M, US_SURVEY_FOOT_M } from '@footmark/site';

/** What grid coordinates are counted in: metres, the international foot, the US survey foot, or what a typed definition has. */
export type GridUnit = { readonly name: 'm' | 'ft' | 'us-ft' | 'other'; readonly metres: number };

export const gridUnits = {
  m: { name: 'm', metres: 1 },
  ft: { name: 'ft', metres: FOOT_M },
  'us-ft': { name: 'us-ft', metres: US_SURVEY_FOOT_M },
} as const satisfies Record<string, GridUnit>;

/** Definitions give a foot with 12 digits or more; the two feet differ by 2e-6. */
const SAME_UNIT = 1e-9;

/** The unit of so many metres, by its name where it has one. */
export function gridUnitOf(metres: number): GridUnit {
  const known = Object.values(gridUnits).find((u) => Math.abs(metres / u.metres - 1) < SAME_UNIT);
  return known ?? { name: 'other', metres };
}
