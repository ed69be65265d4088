import { type Mark, markState, WITHIN_95 } from '@footmark/site';
import { holeSizeText, lengthText } from '@footmark/words';
import type { Section } from '../flow/section';
import type { SheetSetting } from '../setting';
import { type TableCell, type TableColumn, tableSection } from '../table/tableSection';
import { depthAt, holeOf } from './depthAt';
import { tieCells, tieColumns } from './tieCells';

/** Every mark with what is painted, how it is found and how large a hole is sure to find it, in the order of runs and readings. */
export function marksTable(setting: SheetSetting): Section {
  const { derived, words } = setting;
  const { sheet } = words;
  const columns: readonly TableColumn[] = [
    { head: sheet.column('mark'), share: 17 },
    { head: sheet.column('seen'), share: 34 },
    { head: sheet.column('station'), share: 17 },
    { head: sheet.column('depth'), share: 16 },
    ...tieColumns(setting),
    { head: sheet.column('hole'), share: 23 },
  ];
  const rows = derived.marks.map((mark) => rowOf(mark, setting));
  return tableSection(sheet.heading('marks'), columns, rows, setting, {
    notes: [sheet.tieNote(), sheet.holeNote(), sheet.depthNote(hasEvenGround(setting))],
  });
}

function rowOf(mark: Mark, setting: SheetSetting): readonly TableCell[] {
  const { derived, words, site } = setting;
  const { label, reading, place } = mark;
  const { sheet } = words;
  const head: TableCell = {
    main: label,
    more: [words.markStateName(markState(mark, derived.locates))],
    large: true,
  };
  const beside = reading.offset === undefined ? [] : [sheet.paintBeside(reading.offset.distance, site.units)];
  const seen: TableCell = {
    main: words.observationName(reading.seen),
    more: [...detailsOf(mark, setting), ...beside],
  };
  if (place === null) return [head, seen, { more: [sheet.noPlace()] }, {}, {}, {}, {}, {}, {}];
  const paths = new Set(derived.marks.map((m) => m.place?.path));
  const on = paths.size > 1 ? [words.targetName({ kind: 'path', id: place.path }, site)] : [];
  return [
    head,
    seen,
    { main: lengthText(place.station, site.units), more: on },
    depthCell(place.path, place.station, setting),
    ...tieCells((place.paint ?? place).ties, withoutTies(mark, setting), setting),
    holeCell(mark, setting),
  ];
}

/** Why there are no tapes to a mark. */
function withoutTies({ reading }: Mark, { derived, words: { sheet } }: SheetSetting): string {
  const under = derived.findings.find(
    (f) =>
      (f.code === 'mark-under-building' || f.code === 'paint-under-building') &&
      f.at.kind === 'reading' &&
      f.at.id === reading.id,
  );
  return under !== undefined && 'building' in under.values
    ? sheet.underBuilding(under.values.building)
    : sheet.noTies();
}

/** How bad it is, where on the pipe's wall, and what was noted. */
function detailsOf({ reading }: Mark, { words }: SheetSetting): readonly string[] {
  const { severity, clock, note } = reading;
  const said = [
    ...(severity === undefined ? [] : [words.severityName(severity)]),
    ...(clock === undefined ? [] : [words.clockText(clock)]),
  ].join(', ');
  return [said, note].filter((t) => t !== '');
}

function depthCell(path: string, station: number, { derived, words, site }: SheetSetting): TableCell {
  const depth = depthAt(derived, path, station);
  if (depth === null) return { more: [words.sheet.depthUnknown()] };
  return {
    main: words.sureText(depth.depth, site.units),
    more: [words.giveOrTakeText(WITHIN_95 * depth.sigma, site.units)],
  };
}

function holeCell({ reading }: Mark, { fit, site }: SheetSetting): TableCell {
  const hole = holeOf(fit, reading.id);
  return hole === null ? { more: ['–'] } : { main: holeSizeText(hole, site.units) };
}

/** Whether any depth counts from a ground that is only taken as even. */
function hasEvenGround({ derived }: SheetSetting): boolean {
  return [...derived.profiles.values()].some((p) => p.heights === 'below-ground');
}
