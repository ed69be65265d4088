import type { Section } from '../flow/section';
import { GAP, SIZE } from '../page/measures';
import type { Item } from '../page/page';
import type { QrCode, SheetSetting } from '../setting';
import { stacked, type TextBlock, textBlock } from '../text/textBlock';

/** A module no smaller than this (mm) is read from a print; a code no smaller than that, to be found at all. */
const MODULE_MM = 0.4;
const LEAST_MM = 30;
/** Bare modules about a code (ISO/IEC 18004 asks for four; from memory). */
const QUIET = 4;

/** Square codes that lead to the same sketch on a phone, side by side with what each is. */
export function qrSection(codes: readonly QrCode[], setting: SheetSetting): Section {
  return {
    heading: setting.words.sheet.heading('on-the-phone'),
    columns: 3,
    gap: GAP.medium,
    make: (width) => ({ pieces: codes.map((code) => codePiece(code, width, setting)) }),
  };
}

function codePiece({ modules, caption }: QrCode, width: number, setting: SheetSetting): TextBlock {
  const count = modules.length + 2 * QUIET;
  const side = Math.max(LEAST_MM, MODULE_MM * count);
  const text = textBlock(
    caption,
    { size: SIZE.small, weight: 'regular', colour: setting.inks.ink, mostLines: 4 },
    Math.min(width, side),
    setting,
  );
  return stacked([{ height: side, paint: ({ x, y }) => [codeItem(modules, x, y, side / count)] }, text]);
}

/** Dark modules of a row that touch are one bar: no hairlines between them in any viewer. */
function codeItem(modules: QrCode['modules'], left: number, top: number, size: number): Item {
  const bars = modules.flatMap((row, r) => {
    const found: { x: number; y: number }[][] = [];
    for (let c = 0; c < row.length; c += 1) {
      if (row[c] !== true) continue;
      let end = c;
      while (row[end + 1] === true) end += 1;
      const [x, y] = [left + (c + QUIET) * size, top + (r + QUIET) * size];
      const right = left + (end + 1 + QUIET) * size;
      found.push([
        { x, y },
        { x: right, y },
        { x: right, y: y + size },
        { x, y: y + size },
      ]);
      c = end;
    }
    return found;
  });
  return { is: 'lines', lines: bars, closed: true, tint: { colour: '#000000' } };
}
