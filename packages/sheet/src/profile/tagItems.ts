import { invertAt, type PathProfile } from '@footmark/site';
import { GAP, LINE, SIZE } from '../page/measures';
import type { Box, Item } from '../page/page';
import type { SheetSetting } from '../setting';
import type { ProfileScale } from './profileScale';
import type { ProfileTag } from './profileTags';

/** Rows of texts above a strip, and how high (mm) each is. */
const TAG = { rows: 3, height: 3.4, air: 1.2 } as const;
const PIN_MM = 0.8;

/** A ring on the pipe at each painted point, and what is painted above the strip. */
export function tagItems(
  tags: readonly ProfileTag[],
  profile: PathProfile,
  scale: ProfileScale,
  box: Box,
  { inks, lettering }: SheetSetting,
): readonly Item[] {
  const taken: { row: number; from: number; to: number }[] = [];
  return tags.flatMap(({ station, label, ink }): readonly Item[] => {
    const colour = inks[ink];
    const x = scale.x(station);
    const half = lettering.widthOf(label, SIZE.small, 'bold') / 2 + TAG.air / 2;
    const row = Array.from({ length: TAG.rows }, (_, i) => i).find(
      (r) => !taken.some((t) => t.row === r && t.from < x + half && t.to > x - half),
    );
    if (row !== undefined) taken.push({ row, from: x - half, to: x + half });
    const pipe = invertAt(profile.line, station);
    const base = box.y - GAP.small - (row ?? 0) * TAG.height;
    const y = pipe === null ? null : scale.y(pipe.invert);
    const above = row === undefined ? null : base + GAP.hair;
    const text: Item = {
      is: 'text',
      at: { x, y: base },
      text: label,
      size: SIZE.small,
      weight: 'bold',
      colour,
      anchor: 'middle',
      turn: 0,
    };
    return [
      ...(y === null ? [] : pinOf(x, y, above, colour, inks.paper)),
      ...(row === undefined ? [] : [text]),
    ];
  });
}

/** A ring on the pipe, and a line up to its text where that has one. */
function pinOf(x: number, y: number, above: number | null, colour: string, paper: string): readonly Item[] {
  const line = [
    { x, y: above ?? y },
    { x, y },
  ];
  return [
    { is: 'lines', lines: [line], closed: false, pen: { colour, width: LINE.hair, dash: [0.8, 0.8] } },
    {
      is: 'circle',
      centre: { x, y },
      radius: PIN_MM,
      pen: { colour, width: LINE.medium },
      tint: { colour: paper },
    },
  ];
}
