import type { SetOut, SetOutPoint } from '@footmark/site';
import { WITHIN_95 } from '@footmark/site';
import { lengthText } from '@footmark/words';
import type { Section } from '../flow/section';
import type { SheetSetting } from '../setting';
import { type TableCell, type TableColumn, tableSection } from '../table/tableSection';
import { tieCells, tieColumns } from './tieCells';

/** Every point of the pipes with its fitting, how far it is along, how deep, and the tapes that it is found by. */
export function setOutTable(
  heading: 'set-out' | 'as-built',
  setOuts: readonly SetOut[],
  setting: SheetSetting,
): Section {
  const { sheet } = setting.words;
  const columns: readonly TableColumn[] = [
    { head: sheet.column('point'), share: 17 },
    { head: sheet.column('fitting'), share: 30 },
    { head: sheet.column('station'), share: 19 },
    { head: sheet.column('from-before'), share: 18 },
    { head: sheet.column('depth'), share: 22 },
    ...tieColumns(setting),
  ];
  const notes = [
    sheet.tieNote(),
    sheet.depthNote(setOuts.some((s) => s.evenGround)),
    ...(heading === 'as-built' ? [sheet.stillStandsNote()] : []),
  ];
  const rows = setOuts.flatMap(({ points }) =>
    points.map((point) => rowOf(point, setOuts.length > 1, setting)),
  );
  return tableSection(sheet.heading(heading), columns, rows, setting, { notes });
}

function rowOf(point: SetOutPoint, named: boolean, setting: SheetSetting): readonly TableCell[] {
  const { words, site } = setting;
  const { units } = site;
  const { bend, fromBefore, under } = point;
  const instead =
    under === null
      ? words.sheet.noTies()
      : words.sheet.underBuilding(words.targetName({ kind: 'feature', id: under }, site));
  return [
    { main: point.label, large: true },
    {
      main: words.setOutName(point),
      more: [
        ...(named ? [words.targetName({ kind: 'path', id: point.path }, site)] : []),
        ...(bend === null ? [] : words.setOutBendTexts(bend, units)),
      ],
    },
    { main: lengthText(point.station, units) },
    fromBefore === null ? { more: ['–'] } : { main: lengthText(fromBefore, units) },
    levelCell(point, setting),
    ...tieCells(point.ties, instead, setting),
  ];
}

function levelCell({ depth, invert }: SetOutPoint, { words, site }: SheetSetting): TableCell {
  const level = invert === null ? [] : [words.sheet.invertText(invert.invert, site.units)];
  if (depth === null) return { more: [words.sheet.depthUnknown(), ...level] };
  return {
    main: words.sureText(depth.depth, site.units),
    more: [words.giveOrTakeText(WITHIN_95 * depth.sigma, site.units), ...level],
  };
}
