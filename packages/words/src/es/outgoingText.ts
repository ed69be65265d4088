import type { GridSystem, GridUnit } from '@footmark/grid';
import { gridSystemText, gridUnitText } from './gridText';

/** What a layer of marks or pipes is called in a map. */
export const mapLayerNames = { marks: 'Marcas', pipe: 'Tuberías' } as const;

/** What the coordinates of a file are of. */
export function fileFrameText(system: GridSystem | null): string {
  return system === null
    ? 'Coordenadas del plano: x al este, y al norte, desde el cero del propio plano.'
    : `Coordenadas: ${gridSystemText(system)}.`;
}

/** What lengths and coordinates of a file are counted in. */
export function fileUnitText(unit: GridUnit): string {
  return `Unidades: ${gridUnitText(unit)}.`;
}
