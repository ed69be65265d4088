import type { GridNote, GridSystem } from '@footmark/grid';

const DEGREE = Math.PI / 180;

/** A convergence (rad) to four decimals of a degree, `+0.4559°`, and to which side of true north grid north lies. */
export type ConvergenceFacts = {
  readonly text: string;
  readonly side: 'east' | 'west' | null;
};

export function convergenceFacts(convergence: number): ConvergenceFacts {
  const degrees = convergence / DEGREE;
  const size = Math.abs(degrees).toFixed(4);
  if (Number(size) === 0) return { text: '0°', side: null };
  return degrees > 0 ? { text: `+${size}°`, side: 'east' } : { text: `−${size}°`, side: 'west' };
}

/** A factor of a grid to eight places. */
export function factorText(factor: number): string {
  return factor.toFixed(8);
}

/** How much a distance in the grid differs from one on the ground: in per cent, and in every 100 of whatever unit. */
export function groundFacts({ partsPerMillion }: Extract<GridNote, { code: 'ground-is-not-grid' }>) {
  const percent = Math.abs(partsPerMillion / 1e4);
  return {
    is: partsPerMillion < 0 ? 'shorter' : 'longer',
    percent: percent.toFixed(4),
    inHundred: percent.toFixed(3),
  } as const;
}

/** A unit's length in metres, as far as a definition tells it. */
export function metresText(metres: number): string {
  return `${Number(metres.toPrecision(12))} m`;
}

/** What a system is called: its family's name and its own, datum, unit and code, of which some may be missing. */
export function gridSystemTextIn(
  family: Readonly<Record<GridSystem['kind'], string>>,
  unitText: (unit: GridSystem['unit']) => string,
): (system: GridSystem) => string {
  return ({ kind, name, datum, unit, epsg }) =>
    [
      `${family[kind]}${name}`,
      ...(datum === null ? [] : [datumNames[datum]]),
      unitText(unit),
      ...(epsg === null ? [] : [`EPSG ${epsg}`]),
    ].join(', ');
}

/** Datums are called alike in every language. */
const datumNames: Record<NonNullable<GridSystem['datum']>, string> = {
  NAD83: 'NAD 83',
  'NAD83(2011)': 'NAD 83(2011)',
  WGS84: 'WGS 84',
};
