import type { GridSystem } from '@footmark/grid';

/** Datums as surveyors write them, in every language. */
export const datumNames: Record<NonNullable<GridSystem['datum']>, string> = {
  NAD83: 'NAD 83',
  'NAD83(2011)': 'NAD 83(2011)',
  WGS84: 'WGS 84',
};

/** A factor of a grid to eight places: a millimetre in a hundred kilometres. */
export function factorText(factor: number): string {
  return factor.toFixed(8);
}

/** Decimals of a degree that a convergence is given to: a third of a second. */
const CONVERGENCE_DECIMALS = 4;

/** A convergence (rad) with its sign, and on which side of true north grid north lies; null: on neither. */
export function convergenceFacts(convergence: number): {
  readonly text: string;
  readonly side: 'east' | 'west' | null;
} {
  const degrees = (convergence * 180) / Math.PI;
  const size = Math.abs(degrees).toFixed(CONVERGENCE_DECIMALS);
  if (Number(size) === 0) return { text: '0°', side: null };
  return degrees > 0 ? { text: `+${size}°`, side: 'east' } : { text: `−${size}°`, side: 'west' };
}

/** How much a distance in a grid differs from the same on the ground: in per cent, and in a hundred of any unit. */
export function groundFacts(partsPerMillion: number): {
  readonly percent: string;
  readonly inHundred: string;
  readonly gridIs: 'shorter' | 'longer';
} {
  const percent = Math.abs(partsPerMillion) / 1e4;
  return {
    percent: `${percent.toFixed(4)} %`,
    inHundred: percent.toFixed(3),
    gridIs: partsPerMillion < 0 ? 'shorter' : 'longer',
  };
}

/** How many metres a unit without a name has. */
export function metresText(metres: number): string {
  return `${Number(metres.toPrecision(12))} m`;
}
