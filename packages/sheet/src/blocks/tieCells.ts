import type { Tie, Ties } from '@footmark/site';
import { angleText, lengthText } from '@footmark/words';
import type { SheetSetting } from '../setting';
import type { TableCell, TableColumn } from '../table/tableSection';

/** Two tapes, on which side of their base the place is and how well they cut, and a third to check by. */
export function tieColumns({ words: { sheet } }: SheetSetting): readonly TableColumn[] {
  return [
    { head: sheet.column('tie-1'), share: 29 },
    { head: sheet.column('tie-2'), share: 29 },
    { head: sheet.column('side'), share: 17 },
    { head: sheet.column('check'), share: 29 },
  ];
}

/** `instead`: what is said where there are none. */
export function tieCells(ties: Ties | null, instead: string, setting: SheetSetting): readonly TableCell[] {
  const { words } = setting;
  if (ties === null) return [{ more: [instead] }, {}, {}, {}];
  return [
    tieCell(ties.pair[0], setting),
    tieCell(ties.pair[1], setting),
    { main: words.sheet.sideName(ties.side), more: [angleText(ties.cutAngle)] },
    ties.check === null ? { more: ['–'] } : tieCell(ties.check, setting),
  ];
}

function tieCell({ distance, from }: Tie, { words, site }: SheetSetting): TableCell {
  return { main: lengthText(distance, site.units), more: [words.referenceName(from, site)] };
}
