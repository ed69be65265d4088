import type { GridSystem, GridUnit } from '@footmark/grid';
import { gridSystemText, gridUnitText } from './gridText';

/** What a layer of marks or pipes is called in a map. */
export const mapLayerNames = { marks: 'Marks', pipe: 'Pipes' } as const;

/** What the coordinates of a file are of. */
export function fileFrameText(system: GridSystem | null): string {
  return system === null
    ? 'Coordinates of the plan: x east, y north, from the plan’s own zero.'
    : `Coordinates: ${gridSystemText(system)}.`;
}

/** What lengths and coordinates of a file are counted in. */
export function fileUnitText(unit: GridUnit): string {
  return `Units: ${gridUnitText(unit)}.`;
}
