import { type Derived, type SetOutPoint, type Site, setOutsOf } from '@footmark/site';
import type { Words } from '@footmark/words';
import { type CsvCell, csvText } from './csvText';
import { amount, degrees, type TableUnit, tableUnit, tiesCells, tiesHeader } from './tableCells';

/**
 * The points that set every proposed pipe out as a table, one row each, pipe by pipe with the flow. The header names the unit of each
 * length. x is east and y north in the site frame. A turn is positive to the right. What is not known is empty.
 */
export function setOutCsv(site: Site, derived: Derived, words: Words): string {
  const unit = tableUnit(site);
  const rows = setOutsOf(site, derived).flatMap(({ points }) =>
    points.map((point) => pointRow(point, { site, words, unit })),
  );
  return csvText([header(unit.name), ...rows]);
}

function header(unit: string): readonly string[] {
  return [
    ...['point', 'path', 'is', 'unit', `station_${unit}`, `developed_${unit}`, `from_before_${unit}`],
    ...[`x_${unit}`, `y_${unit}`, 'turn_deg', 'fitting', `drop_${unit}`],
    ...[`invert_${unit}`, `depth_to_invert_${unit}`],
    ...tiesHeader(unit),
  ];
}

type Setting = { readonly site: Site; readonly words: Words; readonly unit: TableUnit };

function pointRow(point: SetOutPoint, setting: Setting): readonly CsvCell[] {
  const { site, words, unit } = setting;
  const known = (metres: number | null | undefined) => (metres == null ? null : amount(metres, unit));
  return [
    point.label,
    words.targetName({ kind: 'path', id: point.path }, site),
    words.setOutName(point),
    unit.name,
    amount(point.station, unit),
    amount(point.developed, unit),
    known(point.fromBefore),
    amount(point.at.x, unit),
    amount(point.at.y, unit),
    point.bend === null ? null : degrees(point.bend.turn),
    fittingText(point),
    point.drop === 0 ? null : amount(point.drop, unit),
    known(point.invert?.invert),
    known(point.depth?.depth),
    ...tiesCells(point.ties, setting),
  ];
}

/** `1/8 bend`: the bare fraction is a date to a spreadsheet. */
function fittingText({ bend }: SetOutPoint): string | null {
  return bend?.fitting ? `${bend.fitting.name} bend` : null;
}
