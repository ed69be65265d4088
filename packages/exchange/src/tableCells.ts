import { FOOT_M, type Site, type Tie, type Ties } from '@footmark/site';
import type { Words } from '@footmark/words';
import type { CsvCell } from './csvText';

/** Decimals of a foot or a metre: below a third of a millimetre. */
const LENGTH_DECIMALS = 3;

const ANGLE_DECIMALS = 1;

/** The unit that a table's lengths are in: decimal feet also where the site prints feet and inches. */
export type TableUnit = { readonly name: 'ft' | 'm'; readonly metres: number };

export function tableUnit({ units }: Site): TableUnit {
  return units.length === 'm' ? { name: 'm', metres: 1 } : { name: 'ft', metres: FOOT_M };
}

export function amount(metres: number, unit: Pick<TableUnit, 'metres'>): number {
  return tableAmount(metres / unit.metres);
}

/** A length that is in its unit already, as tables have it. */
export function tableAmount(value: number): number {
  return rounded(value, LENGTH_DECIMALS);
}

/** An angle (rad) in degrees. */
export function degrees(angle: number): number {
  return rounded((angle * 180) / Math.PI, ANGLE_DECIMALS);
}

export function tiesHeader(unit: string): readonly string[] {
  return [
    ...['tie_1_from', `tie_1_${unit}`, 'tie_2_from', `tie_2_${unit}`, 'side', 'cut_deg'],
    ...['check_from', `check_${unit}`],
  ];
}

/** What a place is taped from, under `tiesHeader`; empty cells without. */
export function tiesCells(
  ties: Ties | null,
  { site, words, unit }: { readonly site: Site; readonly words: Words; readonly unit: TableUnit },
): readonly CsvCell[] {
  const tieCells = (tie: Tie | null | undefined): readonly CsvCell[] =>
    tie == null ? [null, null] : [words.referenceName(tie.from, site), amount(tie.distance, unit)];
  return [
    ...tieCells(ties?.pair[0]),
    ...tieCells(ties?.pair[1]),
    ties === null ? null : words.sideText(ties, site),
    ties === null ? null : degrees(ties.cutAngle),
    ...tieCells(ties?.check),
  ];
}

/** Rounded to some decimals, never −0. */
function rounded(value: number, decimals: number): number {
  return Number(value.toFixed(decimals)) + 0;
}
